import { judgeRetention, type JudgedPeriod } from '../../../shared/retention/judge-retention.js';
import type { RetentionFacts } from '../../../shared/retention/retention-facts.js';
import type { RetentionKind, RetentionPeriod } from '../../../shared/retention/retention-form.js';
import type {
  RetentionLine,
  RetentionLineState,
  ToldPeriod,
} from '../../../shared/retention/retention-line.js';
import type { DeletionStop, DeletionTarget } from '../record/record.api.js';

/** Something that may be due, before anybody asked what stops it. */
export interface RetentionSubject {
  readonly kind: RetentionKind;
  readonly periods: readonly RetentionPeriod[];
  readonly facts: RetentionFacts;
  readonly version: number;
  readonly incidentId: string | null;
  readonly reference: string | null;
  readonly month: string | null;
  readonly holds: Readonly<Record<string, number>>;
}

export function keyOf(kind: string, of: string): string {
  return `${kind}/${of}`;
}

/** What of it stops are asked about. */
export function targetOf({ kind, incidentId, month }: RetentionSubject): DeletionTarget {
  const days = month === null ? null : { from: `${month}-01`, through: lastDayOf(month) };
  return { incidentId, kind: kind.id, days };
}

/** `lastDayOf('2024-02')` is `'2024-02-29'`. */
export function lastDayOf(month: string): string {
  const [year = 0, number = 1] = month.split('-').map(Number);
  return new Date(Date.UTC(year, number, 0)).toISOString().slice(0, 10);
}

/**
 * How a subject stands; null for one whose time is neither over nor soon over.
 * @param today ISO date of the business
 * @param soon the day until which something counts as soon due
 */
export async function lineOf(
  subject: RetentionSubject,
  { today, soon }: { today: string; soon: string },
  stopsOf: (target: DeletionTarget) => Promise<readonly DeletionStop[]>,
): Promise<RetentionLine | null> {
  const { kind, periods, facts, version, incidentId, reference, month, holds } = subject;
  const judged = judgeRetention(periods, facts, today);
  const isSoon = judged.state === 'not-due' && judged.latest !== null && judged.latest < soon;
  if (judged.state === 'not-due' && !isSoon) return null;
  const stops = judged.state === 'cannot-tell' ? [] : await stopsOf(targetOf(subject));
  const states: Record<typeof judged.state, RetentionLineState> = {
    due: stops.length > 0 ? 'stopped' : 'due',
    'cannot-tell': 'cannot-tell',
    'not-due': 'soon',
  };
  return {
    id: keyOf(kind.id, incidentId ?? month ?? ''),
    version,
    kind: kind.id,
    incidentId,
    reference,
    month,
    state: states[judged.state],
    earliest: judged.earliest,
    latest: judged.latest,
    periods: judged.periods.map(tell),
    missing: judged.missing,
    stops,
    holds,
    keptUntil: facts.keptUntil,
  };
}

function tell({ period, applies, months, earliest, latest }: JudgedPeriod): ToldPeriod {
  const { id, reason, citation, basis, doubts = [] } = period;
  const counts = applies === 'true' ? 'true' : 'unknown';
  return { id, months, earliest, latest, applies: counts, reason, citation, basis, doubts };
}
