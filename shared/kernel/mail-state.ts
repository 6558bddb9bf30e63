/**
 * What became of a mail.
 *
 *     queued    waits for its turn or its next try
 *     sending   is being handed over
 *     sent      the server, or the folder, took it
 *     failed    was refused for good, or tried too often; a person may have it sent again
 *     uncertain may have been delivered, nobody can tell: never sent again by itself, a person decides
 *     delivered was uncertain, and a person found that it had arrived
 */
export const MAIL_STATES = ['queued', 'sending', 'sent', 'failed', 'uncertain', 'delivered'] as const;

export type MailState = (typeof MAIL_STATES)[number];
