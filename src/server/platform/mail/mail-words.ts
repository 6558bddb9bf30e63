/** How mail is carried. */
export const CARRIERS = ['smtp', 'folder'] as const;
export type CarrierKind = (typeof CARRIERS)[number];

/** What a person decided about a mail that did not go through by itself. */
export const MAIL_DECISIONS = ['resend', 'delivered'] as const;
export type MailDecision = (typeof MAIL_DECISIONS)[number];
