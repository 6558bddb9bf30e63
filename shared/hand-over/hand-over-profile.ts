/** For whom a packet is made. */
export const RECIPIENTS = ['insurer', 'counsel', 'agency', 'renter', 'other-party', 'in-house'] as const;
export type Recipient = (typeof RECIPIENTS)[number];

/** How a value or a picture is changed so that it tells less. */
export const MASKINGS = ['initials', 'unnamed', 'year', 'last-four', 'no-metadata', 'blurred'] as const;
export type Masking = (typeof MASKINGS)[number];

/** What becomes of one kind of field or attachment, and why. */
export type ProfileDecision =
  /** `own`: only what belongs to the recipient. */
  | { readonly does: 'goes'; readonly own?: true; readonly reason: string }
  | { readonly does: 'masked'; readonly how: Masking; readonly reason: string }
  /** `choice`: the sender may have it go; without it that takes a manager's override. */
  | { readonly does: 'stays'; readonly choice?: true; readonly reason: string };

/** What leaves the house for one kind of recipient; a file of `forms/hand-over/profiles`. */
export interface Profile {
  readonly recipient: Recipient;
  readonly title: string;
  /** How people are named who are not known to be of age. */
  readonly minors: 'named' | 'initials';
  /** By the kinds of `forms/hand-over/fields.json`. */
  readonly decisions: Readonly<Record<string, ProfileDecision>>;
}

/** Attachments and everything else of an incident that is no field of a section which people write. */
export const ATTACHMENTS = [
  'photo',
  'video',
  'audio',
  'document',
  'file-words',
  'statement-original',
  'filed-report',
  'restricted-file',
  'stranger',
  'custody',
  'outside-evidence',
  'filing',
  'notice',
  'decision',
  'determination',
  'task',
  'hold',
  'request',
  'privileged',
  'earlier-value',
  'reason-for-change',
  'author',
] as const;
export type Attachment = (typeof ATTACHMENTS)[number];

/** Every field of the record by what it tells: `forms/hand-over/fields.json`. */
export interface FieldKinds {
  readonly kinds: readonly {
    readonly kind: string;
    readonly what: string;
    /** Section and pointer; a star stands for the id of an item. */
    readonly fields: readonly string[];
  }[];
  readonly attachments: readonly { readonly kind: string; readonly what: string }[];
}
