import type { ReadingBasis } from '../law/rule-pack.js';

/** What a period is counted from. */
export const PERIOD_STARTS = [
  /** The day on which it happened. */
  'occurrence',
  /** The later of that day and the one on which the youngest person concerned comes of age. */
  'majority',
  /** The end of the calendar year in which it happened. */
  'year-end',
  /** The day on which the incident was closed. */
  'closing',
  /** The day on which an employee who was hurt leaves. */
  'employment-end',
  /** The day on which the latest packet was made. */
  'packet-made',
  /** The day on which the craft came back. */
  'return',
  /** The day on which a draft was last saved. */
  'saved',
  /** The day on which a mail was queued. */
  'queued',
] as const;
export type PeriodStart = (typeof PERIOD_STARTS)[number];

/** One reason to keep something, and for how long. */
export interface RetentionPeriod {
  readonly id: string;
  readonly months: number;
  readonly from: PeriodStart;
  readonly reason: string;
  /** Null for a choice of the business. */
  readonly citation: string | null;
  /** `choice`: no law asks for it; the business may lengthen it. */
  readonly basis: ReadingBasis | 'choice';
  /** Counts only where an employee was hurt at work. */
  readonly onlyIf?: 'employee-hurt';
  /** Does not count where it surely happened in these states alone (USPS codes). */
  readonly notIn?: readonly string[];
  readonly doubts?: readonly string[];
}

/** What is deleted together, as one decision. */
export interface RetentionKind {
  readonly id: string;
  readonly title: string;
  /** An incident each, or the outings or mails of one month. */
  readonly of: 'incident' | 'outings' | 'mails';
  /** Kinds of `forms/hand-over/fields.json`; `all` is every field of the record. */
  readonly fields?: 'all' | readonly string[];
  readonly parts?: readonly ('files' | 'privileged' | 'packets' | 'drafts' | 'work')[];
  readonly goes: readonly string[];
  readonly stays: readonly string[];
  /** Ids of periods; the longest that applies counts. */
  readonly periods: readonly string[];
  /** Goes on the direction of counsel alone. */
  readonly counsel?: true;
}

/** `forms/retention/retention.json`. */
export interface RetentionForm {
  /** So many days before it is due, something is listed as soon due. */
  readonly soonDays: number;
  readonly majority: {
    readonly years: number;
    /** By USPS code, where it is later. */
    readonly later: Readonly<Record<string, number>>;
    readonly citation: string;
    readonly basis: ReadingBasis;
  };
  readonly periods: readonly RetentionPeriod[];
  readonly kinds: readonly RetentionKind[];
}
