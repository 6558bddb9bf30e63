import type { ReadingBasis } from '../law/rule-pack.js';

/** How something stands that is kept. `stopped`: its time is over, and something stops its deletion. */
export const RETENTION_STATES = ['due', 'stopped', 'cannot-tell', 'soon'] as const;
export type RetentionLineState = (typeof RETENTION_STATES)[number];

/** A period as it is told. */
export interface ToldPeriod {
  readonly id: string;
  readonly months: number;
  /** Last days, between which it ends; null where nobody can tell. */
  readonly earliest: string | null;
  readonly latest: string | null;
  readonly applies: 'true' | 'unknown';
  readonly reason: string;
  readonly citation: string | null;
  readonly basis: ReadingBasis | 'choice';
  readonly doubts: readonly string[];
}

/** One thing that a person may decide about: a kind of an incident, or of a month. */
export interface RetentionLine {
  /** `medical/<incident>`, `outings/2024-06`. */
  readonly id: string;
  /** What If-Match is held against. */
  readonly version: number;
  readonly kind: string;
  readonly incidentId: string | null;
  readonly reference: string | null;
  /** `2024-06`; null for what is of an incident. */
  readonly month: string | null;
  readonly state: RetentionLineState;
  /** The last day on which it surely has to be kept, and the last on which it can have to be. */
  readonly earliest: string | null;
  readonly latest: string | null;
  readonly periods: readonly ToldPeriod[];
  readonly missing: readonly string[];
  readonly stops: readonly { readonly by: string; readonly id: string; readonly words: string }[];
  /** How much of what is there: fields, files, packets, notes, drafts, outings, mails. */
  readonly holds: Readonly<Record<string, number>>;
  readonly keptUntil: string | null;
}

/** What somebody decided. */
export interface RetentionDecision {
  readonly id: string;
  readonly kind: string;
  readonly incidentId: string | null;
  readonly reference: string | null;
  readonly month: string | null;
  readonly decision: 'delete' | 'keep';
  readonly reason: string;
  readonly keepUntil: string | null;
  readonly counsel: string | null;
  readonly directedOn: string | null;
  /** How much went. */
  readonly gone: Readonly<Record<string, number>>;
  readonly person: string;
  readonly role: string;
  readonly accountId: string;
  /** RFC 3339. */
  readonly at: string;
}

/** That a kind of an incident was deleted, in the section `retention` of its record. */
export interface RetentionSection {
  deletions?: (Pick<RetentionDecision, 'id' | 'kind' | 'at' | 'person' | 'role' | 'reason' | 'gone'> & {
    counsel?: string;
    directedOn?: string;
  })[];
  kept?: (Pick<RetentionDecision, 'id' | 'kind' | 'at' | 'person' | 'role' | 'reason'> & { until: string })[];
}
