import { earliestClock, type Decision, type Reopening } from './decision.js';
import { type Filing, standingFilings } from './filing.js';
import { findReport, type OwedReport, type ReportKey } from './owed-report.js';

/** Everything that was signed and filed on the reports of an incident, each list in the order in which it grew. */
export interface DecisionBook {
  readonly decisions: readonly Decision[];
  readonly reopenings: readonly Reopening[];
  readonly filings: readonly Filing[];
}

/** What was signed and filed on one report, and whether it stands. */
export interface ReportStanding {
  /** The decision that stands; null where none was signed or what was signed was reopened. */
  readonly decision: Decision | null;
  /** What was reopened and no later decision or filing has answered, the oldest first. */
  readonly reopenings: readonly Reopening[];
  /** Those that count, the oldest first. */
  readonly filings: readonly Filing[];
  readonly supplementDue: boolean;
}

/**
 * How one report stands in the book.
 * @example followReport({ duty: 'us/accident-report', vessel: null }, { decisions: [], reopenings: [], filings: [] })
 * // { decision: null, reopenings: [], filings: [], supplementDue: false }
 */
export function followReport(
  report: OwedReport,
  all: readonly OwedReport[],
  book: DecisionBook,
): ReportStanding {
  const means = (key: ReportKey): boolean => findReport(all, key) === report;
  const decision = book.decisions.filter(means).at(-1) ?? null;
  const reopenings = book.reopenings.filter(means);
  const filings = standingFilings(book.filings).filter(({ satisfies }) => satisfies.some(means));
  const filing = filings.at(-1) ?? null;
  const undone = reopenings.filter((one) => one.decision !== undefined && one.decision === decision?.id);
  const stale = reopenings.filter((one) => one.filing !== undefined && one.filing === filing?.id);
  const standing = undone.length === 0 ? decision : null;
  const settled = standing?.kind === 'no-report' && standing.answers === stale.at(-1)?.id;
  const supplementDue = stale.length > 0 && !settled;
  return {
    decision: standing,
    reopenings: filing === null ? undone : supplementDue ? stale : [],
    filings,
    supplementDue,
  };
}

/** How a report stands at a moment. */
export type ReportState = 'open' | 'decided' | 'waiting' | 'filed' | 'supplement-due' | 'overdue';
export const REPORT_STATES: readonly ReportState[] = [
  'open',
  'decided',
  'waiting',
  'filed',
  'supplement-due',
  'overdue',
];

/** What tells the state of a report at any moment. */
export interface StateMarks {
  readonly outcome: OwedReport['duty']['outcome'];
  /** Epoch milliseconds: after this it is overdue unless it was filed or nothing is due; null without a clock. */
  readonly overdueAfter: number | null;
  readonly filed: boolean;
  readonly supplementDue: boolean;
  readonly decision: Decision['kind'] | null;
  /** Epoch milliseconds: until when it was decided to wait. */
  readonly waitUntil: number | null;
}

/**
 * The state at `now`, in epoch milliseconds. At the very moment of its clock a report is not overdue.
 * @example reportState({ …marks, filed: true, supplementDue: false }, now) // 'filed'
 */
export function reportState(marks: StateMarks, now: number): ReportState {
  const { outcome, overdueAfter, filed, supplementDue, decision, waitUntil } = marks;
  if (filed) return supplementDue ? 'supplement-due' : 'filed';
  if (decision === 'no-report') return 'decided';
  if (outcome !== 'not-required' && overdueAfter !== null && now > overdueAfter) return 'overdue';
  if (decision === 'wait') return waitUntil !== null && now < waitUntil ? 'waiting' : 'open';
  return decision === null ? 'open' : 'decided';
}

/**
 * What tells the state of a report. What is required is late after its own deadline. What may be required is late after
 * the earliest clock it could have, but not where that is "without delay": such a duty is urgent from the first call
 * on, and would otherwise be late before anybody could have asked.
 */
export function stateMarks({ duty }: OwedReport, standing: ReportStanding): StateMarks {
  const { decision } = standing;
  const clock = duty.dueAt !== null ? Date.parse(duty.dueAt) : duty.immediate ? null : earliestClock(duty);
  return {
    outcome: duty.outcome,
    overdueAfter: clock,
    filed: standing.filings.length > 0,
    supplementDue: standing.supplementDue,
    decision: decision?.kind ?? null,
    waitUntil: decision?.kind === 'wait' ? Date.parse(decision.until) : null,
  };
}
