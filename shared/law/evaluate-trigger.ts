import type { Truth } from '../kernel/truth.js';
import { earlier, evaluateLimits, remarkOnLimits, type LimitContext } from './evaluate-limits.js';
import {
  NOTHING_SPECIAL,
  type ClockFacts,
  type DatedOpenPoint,
  type Deadline,
  type TestResult,
  type TriggerFinding,
} from './finding.js';
import type { Occurrence } from './read-occurrence.js';
import type { DutyRule, RulePack, TestName, Trigger } from './rule-pack.js';
import { testDamage, type DamageFacts } from './test-damage.js';
import { isEventTest, testCasualty, testCompleteLoss, testEvent } from './test-event.js';
import { testPeople, type PeopleReading } from './test-people.js';
import { isRentalTest, testRental } from './test-rental.js';
import { isBetterBasis } from './weigh-basis.js';

/** The facts as one pack's triggers look at them. */
export interface TriggerContext {
  readonly occurrence: Occurrence;
  readonly people: PeopleReading;
  readonly damage: DamageFacts;
  readonly pack: Pick<RulePack, 'basis'>;
  readonly limits: LimitContext;
}

const REMARKS: readonly TestName[] = ['theft-or-vandalism', 'vessel-disappears', 'ask-counsel', 'other'];

/** Whether a test is one that no fact can answer: it is shown as a remark and is no trigger. */
export function isRemark(test: TestName): boolean {
  return REMARKS.includes(test);
}

/** One trigger of a rule over the facts, with its deadline and what is still open. */
export function evaluateTrigger(
  trigger: Trigger,
  rule: Pick<DutyRule, 'limits'>,
  context: TriggerContext,
): TriggerFinding {
  const result = runTest(trigger, context);
  const weak = restsOnWeakerText(trigger, context.pack);
  const value: Truth = weak && result.value === 'true' ? 'unknown' : result.value;
  // Most open points move no clock, and theirs is laid on once.
  let usual: Deadline | undefined;
  const lay = (clock: ClockFacts) => evaluateLimits(rule, trigger.test, clock, context.limits);
  const limit = (clock: ClockFacts) => (clock === NOTHING_SPECIAL ? (usual ??= lay(clock)) : lay(clock));
  const deadlines = result.holding.map(limit);
  const open: DatedOpenPoint[] = result.open.map(({ point, clock }) => ({
    ...point,
    proves: point.proves && !weak,
    soonest: limit(clock),
  }));
  if (weak && result.value !== 'false') {
    open.push({
      fact: null,
      text: `Is this still the law? ${weakness(trigger)}`,
      proves: result.value === 'true',
      denies: false,
      soonest: [...deadlines, ...open.map(({ soonest }) => soonest)].reduce(earlier),
    });
  }
  return {
    test: trigger.test,
    value,
    text: `${result.text}${trigger.note && ` Law: ${trigger.note}`}${remarkOnLimits(rule, trigger.test)}`,
    citation: trigger.citation ?? null,
    deadline: value === 'true' ? deadlines.reduce(earlier) : null,
    open,
  };
}

/** A trigger of weaker text than its pack cannot make a duty by itself; an agency's own words stand. */
function restsOnWeakerText(trigger: Trigger, pack: Pick<RulePack, 'basis'>): boolean {
  const { basis } = trigger;
  return basis !== undefined && basis !== 'read-agency' && isBetterBasis(pack.basis, basis);
}

function weakness(trigger: Trigger): string {
  return trigger.basis === 'superseded'
    ? 'It stood in an earlier text; the present one was not read.'
    : 'Only a secondary source says so.';
}

function runTest(trigger: Trigger, context: TriggerContext): TestResult {
  if (isEventTest(trigger.test)) return testEvent(trigger.test, context.occurrence);
  if (isRentalTest(trigger.test)) return testRental(trigger, context.occurrence);
  switch (trigger.test) {
    case 'damage-total':
    case 'damage-one-person':
    case 'damage-one-item':
    case 'damage-any':
      return testDamage(trigger, context.damage);
    case 'complete-loss':
      return testCompleteLoss(context.occurrence);
    case 'any-collision-or-casualty':
      return testCasualty(context.occurrence);
    default:
      return testPeople(trigger, context.people, context.occurrence);
  }
}
