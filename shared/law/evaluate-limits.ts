import { limitEnd, type Period } from '../time/limit-end.js';
import type { ClockFacts, Deadline } from './finding.js';
import type { Occurrence } from './read-occurrence.js';
import type { Comparison, DutyRule, Limit, LimitTime, TestName } from './rule-pack.js';
import { nameTime } from './name-law-terms.js';
import { standingReadings } from './weigh-basis.js';

/** What a limit needs beside the rule itself. */
export interface LimitContext {
  readonly occurrence: Occurrence;
  readonly holidays: readonly string[];
  /** Named where a limit has no citation of its own. */
  readonly citation: string;
}

const BORROWED = 'federal clock borrowed: the law read states no time';
const FEDERAL_CLOCK = '33 CFR 173.55(b)';

/**
 * The earliest deadline that the rule's limits set for one test. Where something unknown leaves two clocks
 * possible (a death at an unknown hour), both are laid on and the earlier is the answer.
 */
export function evaluateLimits(
  rule: Pick<DutyRule, 'limits'>,
  test: TestName,
  facts: ClockFacts,
  context: LimitContext,
): Deadline {
  const covering = rule.limits.filter((limit) => limit.tests.includes(test));
  const deadlines = covering
    .filter((limit) => mayApply(limit, covering, test, facts))
    .flatMap((limit) => limitDeadlines(limit, test, facts, context));
  return deadlines.reduce(earlier);
}

/** Times that weaker or superseded sources name for a test: shown, and no clock of theirs runs. */
export function remarkOnLimits(rule: Pick<DutyRule, 'limits'>, test: TestName): string {
  const weaker = rule.limits
    .filter((limit) => limit.tests.includes(test))
    .flatMap((limit) => {
      const [best] = standingReadings(limit.readings ?? []);
      return (limit.readings ?? []).filter(({ basis }) => basis !== best?.basis);
    });
  return weaker.map(({ time, source }) => ` ${nameTime(time)} by a weaker source (${source}).`).join('');
}

/** The earlier of two deadlines; of two at one instant, the immediate one. */
export function earlier(a: Deadline, b: Deadline): Deadline {
  if (a.at !== b.at) return a.at < b.at ? a : b;
  return b.immediate && !a.immediate ? b : a;
}

/** False only when what is known rules the limit out. */
function mayApply(limit: Limit, covering: readonly Limit[], test: TestName, facts: ClockFacts): boolean {
  if (test === 'death') {
    const narrow = limit.deathWithinHours ?? covering.find((one) => one.deathWithinHours)?.deathWithinHours;
    if (narrow === undefined || facts.hoursToDeath === undefined) return true;
    return diedWithin(facts.hoursToDeath, narrow) === (limit.deathWithinHours !== undefined);
  }
  if (test === 'incapacity') {
    const narrow = limit.incapacityHours ?? covering.find((one) => one.incapacityHours)?.incapacityHours;
    if (narrow === undefined || facts.incapacitatedHours === undefined) return true;
    const beyond = exceeds(facts.incapacitatedHours, narrow.hours, narrow.comparison);
    return beyond === (limit.incapacityHours !== undefined);
  }
  return true;
}

/** Exactly 24 hours is within; with a span, within from either end is within. */
export function diedWithin(hoursToDeath: readonly number[], hours: number): boolean {
  return hoursToDeath.some((elapsed) => elapsed <= hours);
}

/** `exceeds(24, 24, 'more-than')` is false, with `'at-least'` true. */
export function exceeds(value: number, bound: number, comparison: Comparison): boolean {
  return comparison === 'at-least' ? value >= bound : value > bound;
}

function limitDeadlines(limit: Limit, test: TestName, facts: ClockFacts, context: LimitContext): Deadline[] {
  const citation = limit.citation ?? context.citation;
  return standingTimes(limit).flatMap((time) =>
    time === null
      ? [borrowedDeadline(test, facts, context)]
      : [deadline(time, limit.from, test, facts, context, (words) => `${words} (${citation})`, citation)],
  );
}

/** The times of the best-based readings; weaker ones are remarks. */
function standingTimes(limit: Limit): (LimitTime | null)[] {
  const readings = standingReadings(limit.readings ?? []);
  const best = readings[0];
  if (best === undefined) return [limit.time];
  return readings.filter((reading) => reading.basis === best.basis).map((reading) => reading.time);
}

function deadline(
  time: Period,
  from: Limit['from'],
  test: TestName,
  facts: ClockFacts,
  context: LimitContext,
  describe: (words: string) => string,
  citation: string,
): Deadline {
  const immediate = 'immediate' in time;
  if (from === 'agreed-return' && facts.dueBackAt === undefined) return ranOut(context, describe, citation);
  const [start, startWords] = limitStart(from, immediate, test, facts, context.occurrence);
  return {
    at: limitEnd(start, time, context.occurrence.clock, context.holidays),
    immediate,
    basis: describe(`${periodWords(time)} from ${startWords}`),
    citation,
  };
}

/** Nobody knows yet for when the return was agreed: the clock may have ended by then, and no later time may be shown. */
function ranOut(
  { occurrence }: LimitContext,
  describe: (words: string) => string,
  citation: string,
): Deadline {
  const basis = describe('the agreed return is not known, so that the time is taken to have run out');
  return { at: occurrence.occurredAt, immediate: false, basis, citation };
}

/** A start that the text leaves open is the occurrence; `diedAt` and `lastSeenAt` move only their own trigger. */
function limitStart(
  from: Limit['from'],
  immediate: boolean,
  test: TestName,
  facts: ClockFacts,
  occurrence: Occurrence,
): [number, string] {
  if (from === 'knowledge') return [occurrence.learnedAt, 'the moment the business knew'];
  if (from === 'event-known') return eventKnown(test, facts, occurrence);
  if (from === 'agreed-return' && facts.dueBackAt !== undefined)
    return [facts.dueBackAt, 'the agreed return'];
  if (test === 'death' && (from === 'death' || immediate) && facts.diedAt !== undefined) {
    return [facts.diedAt, 'the death'];
  }
  if (test === 'disappearance' && immediate && facts.lastSeenAt !== undefined) {
    return [facts.lastSeenAt, 'the moment last seen'];
  }
  return [occurrence.occurredAt, 'the occurrence'];
}

/** The harm itself, or the moment the business learned of it where that was later (29 CFR 1904.39(b)(7) and (8)). */
function eventKnown(test: TestName, facts: ClockFacts, occurrence: Occurrence): [number, string] {
  const event =
    test === 'employee-death'
      ? facts.diedAt
      : test === 'employee-admission'
        ? facts.admittedAt
        : facts.lostAt;
  const happened = event ?? occurrence.occurredAt;
  const known = facts.knownAt ?? occurrence.learnedAt;
  return known > happened
    ? [known, 'the moment the business knew']
    : [happened, event === undefined ? 'the occurrence' : (EVENT_WORDS[test] ?? 'the loss')];
}

const EVENT_WORDS: Partial<Record<TestName, string>> = {
  'employee-death': 'the death',
  'employee-admission': 'the admission',
};

/**
 * A law that states no time borrows the federal clock of its kind of trigger, 33 CFR 173.55(b): 48 hours
 * for a death within 24 hours, an injury or a disappearance, otherwise 10 days (from a later death).
 */
function borrowedDeadline(test: TestName, facts: ClockFacts, context: LimitContext): Deadline {
  const borrow = (time: Period, from: Limit['from']): Deadline =>
    deadline(time, from, test, facts, context, () => BORROWED, FEDERAL_CLOCK);
  const twoDays = { hours: 48 };
  const tenDays = { days: 10, dayKind: 'plain' } as const;
  switch (test) {
    case 'death': {
      if (facts.hoursToDeath === undefined || diedWithin(facts.hoursToDeath, 24)) {
        return borrow(twoDays, 'occurrence');
      }
      return borrow(tenDays, 'death');
    }
    case 'damage-total':
    case 'damage-one-person':
    case 'damage-one-item':
    case 'damage-any':
    case 'complete-loss':
    case 'any-collision-or-casualty':
      return borrow(tenDays, 'occurrence');
    default:
      return borrow(twoDays, 'occurrence');
  }
}

function periodWords(time: Period): string {
  if ('immediate' in time) return 'without delay, counted';
  if ('hours' in time) return `${time.hours} hours`;
  return time.dayKind === 'business' ? `${time.days} working days` : `${time.days} days`;
}
