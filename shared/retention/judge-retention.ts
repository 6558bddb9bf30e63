import { not, type Truth } from '../kernel/truth.js';
import { endOfPeriod, laterDay } from './end-of-period.js';
import type { RetentionFacts, StartDay } from './retention-facts.js';
import type { RetentionPeriod } from './retention-form.js';

/** A period with its last day: between two days, both included; null where nobody can tell. */
export interface JudgedPeriod {
  readonly period: RetentionPeriod;
  readonly applies: Truth;
  readonly begun: boolean;
  readonly months: number;
  readonly earliest: string | null;
  readonly latest: string | null;
}

/** `due`: every period is surely over. `cannot-tell`: it may be, and what is missing would show it. */
export type RetentionState = 'due' | 'not-due' | 'cannot-tell';

export interface RetentionJudgment {
  readonly state: RetentionState;
  /** The last day on which it surely has to be kept. Null while nothing is surely known. */
  readonly earliest: string | null;
  /** The last day on which it can have to be kept; null where nobody can tell. */
  readonly latest: string | null;
  /** The longest that applies or may apply is the first. */
  readonly periods: readonly JudgedPeriod[];
  /** What would have to be known or done, in words. */
  readonly missing: readonly string[];
}

/**
 * How long something is kept: the longest period that applies counts, and one that may apply counts too. What begins at
 * an unknown time is never due.
 * @param today ISO date of the business
 * @example judgeRetention([threeYearsFromOccurrence], factsOf({ occurrence: onDay('2020-06-13') }), '2023-06-13').state
 * // 'not-due': it is kept through the last day
 */
export function judgeRetention(
  periods: readonly RetentionPeriod[],
  facts: RetentionFacts,
  today: string,
): RetentionJudgment {
  const judged = periods.map((period) => judge(period, facts)).filter(({ applies }) => applies !== 'false');
  const sure = judged.filter(({ applies }) => applies === 'true');
  const { keptUntil } = facts;
  const earliest = latestOf([...sure.map((one) => one.earliest), keptUntil]);
  const open = judged.length === 0 || judged.some((one) => one.latest === null);
  const latest = open ? null : latestOf([...judged.map((one) => one.latest), keptUntil]);
  const waits = sure.some(({ begun }) => !begun) || (earliest !== null && today <= earliest);
  const state = latest !== null && today > latest ? 'due' : waits ? 'not-due' : 'cannot-tell';
  const matters = judged.filter((one) => one.latest === null || one.latest >= today);
  return {
    state,
    earliest,
    latest,
    periods: [...judged].sort(longestFirst),
    missing: [...new Set(matters.flatMap(({ period }) => missingFor(period, facts, state)))],
  };
}

function judge(period: RetentionPeriod, facts: RetentionFacts): JudgedPeriod {
  const chosen = period.basis === 'choice' ? (facts.chosenMonths[period.id] ?? 0) : 0;
  const months = Math.max(period.months, chosen);
  const start = startOf(period, facts);
  const end = (day: string | null) => (day === null ? null : endOfPeriod(day, months));
  return {
    period,
    applies: applies(period, facts),
    begun: start.known !== 'not-begun',
    months,
    earliest: start.known === 'not-begun' ? null : end(start.earliest),
    latest: start.known === true ? end(start.latest) : null,
  };
}

function startOf({ from }: RetentionPeriod, { starts }: RetentionFacts): StartDay {
  return starts[from] ?? { known: false, earliest: null, missing: [] };
}

function applies({ onlyIf, notIn }: RetentionPeriod, { employeeHurt, states }: RetentionFacts): Truth {
  if (onlyIf === 'employee-hurt') return employeeHurt;
  if (notIn === undefined) return 'true';
  if (states === null || states.length === 0) return 'unknown';
  const inside = states.filter((state) => notIn.includes(state)).length;
  if (inside === 0) return 'true';
  return not(inside === states.length ? 'true' : 'unknown');
}

function missingFor(
  period: RetentionPeriod,
  facts: RetentionFacts,
  state: RetentionState,
): readonly string[] {
  if (state === 'due') return [];
  const { missing } = startOf(period, facts);
  if (applies(period, facts) === 'true') return missing;
  const asks =
    period.onlyIf === 'employee-hurt'
      ? 'Whether anybody who was hurt, or may have been, was an employee at work.'
      : 'In which state it happened.';
  return [asks, ...missing];
}

function latestOf(days: readonly (string | null)[]): string | null {
  return days.reduce<string | null>(
    (last, day) => (day === null ? last : last === null ? day : laterDay(last, day)),
    null,
  );
}

/** What has no known end is longer than everything that has. */
function longestFirst(one: JudgedPeriod, other: JudgedPeriod): number {
  const [a, b] = [one.latest ?? '9999', other.latest ?? '9999'];
  return a === b ? 0 : a > b ? -1 : 1;
}
