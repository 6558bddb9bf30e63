import type { OwedReport, ReportKey } from './owed-report.js';

/** What a manager may sign on one report. */
export type DecisionKind = 'report' | 'wait' | 'no-report';
export const DECISION_KINDS: readonly DecisionKind[] = ['report', 'wait', 'no-report'];

/** The words of a decision, before anybody signs them. */
export type Signing =
  | {
      /** Now, on what is known, to be supplemented. */
      readonly kind: 'report';
      readonly reason?: string;
    }
  | {
      readonly kind: 'wait';
      /** RFC 3339. */
      readonly until: string;
      /** What is waited for, each in a sentence. */
      readonly questions: readonly string[];
    }
  | {
      /** No report due on the facts as of the time of signing. */
      readonly kind: 'no-report';
      readonly reason?: string;
      /** Name of the lawyer who was asked. */
      readonly counsel?: string;
    };

/** Who signed or recorded something; names as they were then. */
export interface SignedBy {
  readonly account: string;
  readonly person: string;
  readonly role: string;
}

/** A signed decision. It is never changed: a later one takes its place. */
export type Decision = Signing &
  ReportKey & {
    readonly id: string;
    /** Sequence of the stored determination that it was signed on. */
    readonly determination: number;
    readonly signedAt: string;
    readonly by: SignedBy;
    /** Id of the reopening that it answers. */
    readonly answers?: string;
  };

/** What about a report is not as it was, in plain words. */
export interface Change {
  readonly what:
    | 'appeared'
    | 'gone'
    | 'outcome'
    | 'ground'
    | 'deadline'
    | 'reporter'
    | 'authority'
    | 'law'
    | 'operator-says';
  readonly text: string;
}

/** Why what was signed or filed on a report no longer stands as it was. */
export interface Reopening extends ReportKey {
  readonly id: string;
  readonly at: string;
  /** Sequence of the determination that changed it. */
  readonly determination: number;
  /** The decision that was signed last, where one stood. */
  readonly decision?: string;
  /** The filing that is to be supplemented. */
  readonly filing?: string;
  readonly changes: readonly Change[];
}

/** A call to the agency or to counsel about what the law asks, which stands in for law that nobody here has read. */
export interface LegalCall {
  readonly id: string;
  readonly at: string;
  readonly with: 'agency' | 'counsel';
  /** Name, and office or firm. */
  readonly who: string;
  readonly said: string;
  /** Ids of the duties that it was about. */
  readonly duties: readonly string[];
  readonly by: SignedBy;
  readonly recordedAt: string;
}

export interface DecisionRules {
  /** So many hours before the earliest clock the product proposes to report on what is known. */
  readonly leadHours: number;
  /** So many months after it was read, law is to be read again. */
  readonly recheckMonths: number;
}

export const USUAL_RULES: DecisionRules = { leadHours: 24, recheckMonths: 12 };

/**
 * The earliest moment at which the report can be due on what is known, as the determination writes it; null when no
 * clock is known. For a required report it is the sooner one that an open question could still bring.
 * @example earliestDue({ dueAt: '2026-06-23T11:20:00-05:00', dueAtIfRequired: null }) // '2026-06-23T11:20:00-05:00'
 */
export function earliestDue({
  dueAt,
  dueAtIfRequired,
}: Pick<OwedReport['duty'], 'dueAt' | 'dueAtIfRequired'>): string | null {
  if (dueAt === null || dueAtIfRequired === null) return dueAt ?? dueAtIfRequired;
  return Date.parse(dueAtIfRequired) < Date.parse(dueAt) ? dueAtIfRequired : dueAt;
}

/**
 * The same in epoch milliseconds.
 * @example earliestClock({ dueAt: '2026-06-23T11:20:00-05:00', dueAtIfRequired: null }) // 1782231600000
 */
export function earliestClock(duty: Parameters<typeof earliestDue>[0]): number | null {
  const due = earliestDue(duty);
  return due === null ? null : Date.parse(due);
}
