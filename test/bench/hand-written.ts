import { Temporal } from 'temporal-polyfill';
import type { IncidentFacts, Person } from '../../shared/record/incident-facts.js';
import type { DutyRule, RulePack, Trigger } from '../../shared/law/rule-pack.js';

type Verdict = 1 | 0 | -1;
const UNKNOWN = -1;

/**
 * The yardstick: the same comparisons and the same clocks as anyone would write them who needs outcome and
 * deadline only, without trace, questions, reporters or words. Whatever is unknown stays unknown.
 */
export function handWritten(facts: IncidentFacts, packs: readonly RulePack[], zone: string): string[] {
  const occurredAt = Temporal.Instant.from(facts.occurredAt).toZonedDateTimeISO(zone);
  return packs.flatMap((pack) =>
    [...(pack.report ? [pack.report] : []), ...pack.notices].map((rule) =>
      duty(rule, pack, facts, occurredAt),
    ),
  );
}

function duty(
  rule: DutyRule,
  pack: RulePack,
  facts: IncidentFacts,
  occurredAt: Temporal.ZonedDateTime,
): string {
  let outcome: Verdict = 0;
  let due: Temporal.ZonedDateTime | null = null;
  for (const trigger of rule.triggers) {
    const value = test(trigger, pack, facts);
    if (value === 0) continue;
    outcome = outcome === 1 ? 1 : value;
    for (const limit of rule.limits) {
      if (!limit.tests.includes(trigger.test)) continue;
      const one = end(limit.time, occurredAt);
      if (due === null || Temporal.ZonedDateTime.compare(one, due) < 0) due = one;
    }
  }
  return `${outcome} ${due?.toString({ timeZoneName: 'never' }) ?? ''}`;
}

function end(
  time: DutyRule['limits'][number]['time'],
  start: Temporal.ZonedDateTime,
): Temporal.ZonedDateTime {
  if (time === null) return start.add({ hours: 48 });
  if ('immediate' in time) return start;
  if ('hours' in time) return start.add({ hours: time.hours });
  const elapsed = start.add({ hours: 24 * time.days });
  const wallClock = start.add({ days: time.days });
  return Temporal.ZonedDateTime.compare(elapsed, wallClock) < 0 ? elapsed : wallClock;
}

function test(trigger: Trigger, pack: RulePack, facts: IncidentFacts): Verdict {
  switch (trigger.test) {
    case 'damage-total':
    case 'damage-one-person':
    case 'damage-one-item':
    case 'damage-any':
      return damage(trigger, pack, facts);
    case 'complete-loss':
      return some(facts.vessels, (vessel) => answer(vessel.completeLoss));
    case 'any-collision-or-casualty':
      return facts.casualtyTypes.length > 0 ? 1 : UNKNOWN;
    default: {
      const value = some(facts.people, (person) => harm(trigger, person));
      const everyone = facts.everyoneAccountedFor === 'yes' && facts.peopleAssessment === 'complete';
      return value === 0 && !everyone ? UNKNOWN : value;
    }
  }
}

function damage(trigger: Trigger, pack: RulePack, facts: IncidentFacts): Verdict {
  let low = 0;
  let high = facts.damageAssessment === 'complete' ? 0 : Infinity;
  for (const { of, amount } of facts.damage) {
    if (of === 'personal-property' && pack.personalProperty !== 'counts') continue;
    const [from, to] =
      amount === 'unknown'
        ? [0, Infinity]
        : typeof amount === 'number'
          ? [amount, amount]
          : [amount.low, amount.high];
    low += Math.round(from * 100);
    high += Math.round(to * 100);
  }
  const reading = trigger.readings?.[0];
  const need = reading ? reading.amountUsd * 100 + (reading.comparison === 'more-than' ? 1 : 0) : 1;
  return low >= need ? 1 : high >= need ? UNKNOWN : 0;
}

function harm(trigger: Trigger, person: Person): Verdict {
  const { outcome, care } = person;
  if (outcome === 'unhurt') return 0;
  if (outcome === 'missing') return trigger.test === 'disappearance' ? 1 : UNKNOWN;
  if (outcome === 'unknown' || outcome === 'not-back') return UNKNOWN;
  switch (trigger.test) {
    case 'death':
      return outcome === 'died' ? 1 : 0;
    case 'disappearance':
      return 0;
    case 'any-injury':
      return 1;
    case 'loss-of-consciousness':
      return answer(person.lostConsciousness);
    case 'carried-from-scene':
      return answer(person.carriedFromScene);
    case 'incapacity':
      return typeof person.incapacitatedHours === 'number'
        ? person.incapacitatedHours > (trigger.hours ?? 0)
          ? 1
          : 0
        : UNKNOWN;
    default:
      return care === 'beyond-first-aid' ? 1 : care === 'none' || care === 'first-aid' ? 0 : UNKNOWN;
  }
}

function answer(value: 'yes' | 'no' | 'unknown' | undefined): Verdict {
  return value === 'yes' ? 1 : value === 'no' ? 0 : UNKNOWN;
}

function some<T>(items: readonly T[], verdict: (item: T) => Verdict): Verdict {
  let result: Verdict = 0;
  for (const item of items) {
    const one = verdict(item);
    if (one === 1) return 1;
    if (one === UNKNOWN) result = UNKNOWN;
  }
  return result;
}
