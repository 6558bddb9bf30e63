import type {
  Comparison,
  DamageTest,
  EmployeeTest,
  LimitTime,
  PackBasis,
  ReadingBasis,
  ReporterRule,
  TestName,
  Trigger,
} from './rule-pack.js';

/** How a text was read, to be put after "read" or in brackets. */
export const BASIS_WORDS: Record<ReadingBasis | PackBasis, string> = {
  'read-primary': 'in the law itself',
  'read-agency': "on the agency's own page",
  'read-secondary': 'in secondary sources only',
  memory: 'from memory, not checked against a text',
  superseded: 'in a text that has since been replaced',
  'not-read': 'not at all',
};

export const REPORTER_WORDS: Record<ReporterRule, string> = {
  operator: 'the operator',
  owner: 'the owner',
  'operator-or-owner': 'the operator or the owner',
  'owner-if-operator-cannot': 'the owner, if the operator cannot',
  'owner-if-no-operator': 'the owner, if there was no operator',
  'anyone-aboard': 'anyone aboard',
  'anyone-aboard-if-operator-cannot': 'the others aboard, if the operator cannot',
  'other-person-aboard': 'another person aboard',
  'investigating-officer-if-neither-can': 'the investigating officer, if neither can',
  employer: 'the employer',
  'person-in-charge': 'the person in charge of the vessel',
  livery: 'the business that rents the craft out',
};

/** What a limit is for, in few words. */
export const TEST_NAMES: Record<TestName, string> = {
  death: 'a death',
  disappearance: 'a disappearance',
  'any-injury': 'an injury',
  'needs-first-aid': 'an injury that needs first aid',
  'needs-beyond-first-aid': 'an injury that needs more than first aid',
  'receives-beyond-first-aid': 'an injury that gets more than first aid',
  'medical-attention': 'an injury that needs medical attention',
  'serious-injury': 'a serious injury',
  'loss-of-consciousness': 'a loss of consciousness',
  'carried-from-scene': 'a person carried from the scene',
  incapacity: 'incapacity',
  'incapacity-past-the-day': 'incapacity past the day',
  'damage-total': 'damage',
  'damage-one-person': "damage to one person's property",
  'damage-one-item': 'damage to one thing',
  'damage-any': 'any damage',
  'complete-loss': 'the complete loss of a vessel',
  'any-collision-or-casualty': 'any collision or casualty',
  'employee-death': 'the death of an employee',
  'employee-admission': 'the in-patient admission of an employee',
  'employee-amputation': 'the loss of a limb of an employee',
  'employee-eye-loss': 'the loss of an eye of an employee',
  'injury-or-unfit': 'such an injury',
  'oil-sheen': 'a film or sheen of oil',
  grounding: 'a grounding',
  'bridge-strike': 'a bridge struck',
  'propulsion-or-steering-lost': 'a loss of propulsion or steering',
  'seaworthiness-impaired': 'harm to seaworthiness',
  'rental-in-waters': 'a rental',
  overdue: 'a craft that is overdue',
  'theft-or-vandalism': 'theft or vandalism',
  'vessel-disappears': 'a vessel that disappears',
  'ask-counsel': 'what counsel is asked',
  other: 'what else is listed above',
};

type AmountTest = Exclude<DamageTest, 'damage-any'> | 'theft-or-vandalism';

const EVENTS: Record<Exclude<TestName, AmountTest | 'incapacity' | 'overdue'>, string> = {
  death: 'A person dies',
  disappearance: 'A person disappears',
  'any-injury': 'A person is injured, however slightly',
  'needs-first-aid': 'A person is injured and needs first aid',
  'needs-beyond-first-aid': 'A person is injured and needs more than first aid',
  'receives-beyond-first-aid': 'A person is injured and gets more than first aid',
  'medical-attention': 'A person is injured and needs medical attention',
  'serious-injury': 'A person is seriously injured',
  'loss-of-consciousness': 'A person loses consciousness',
  'carried-from-scene': 'A person has to be carried from the scene',
  'incapacity-past-the-day': 'A person cannot do what they normally do, past the day it happened',
  'damage-any': 'Any property is damaged, whatever the amount',
  'complete-loss': 'A vessel is a complete loss',
  'any-collision-or-casualty': 'Any collision, grounding, capsizing or other casualty',
  'employee-death': 'An employee dies',
  'employee-admission': 'An employee is admitted to hospital as an in-patient, for care or treatment',
  'employee-amputation': 'An employee loses a limb or a part of one',
  'employee-eye-loss': 'An employee loses an eye',
  'injury-or-unfit':
    'A person is injured and needs more than first aid and, if they work aboard a vessel in commercial service, is unfit for routine duties',
  'oil-sheen': 'Oil or fuel leaves a film, sheen or discoloration on the water or the shore',
  grounding: 'A vessel grounds without intent',
  'bridge-strike': 'A vessel strikes a bridge',
  'propulsion-or-steering-lost': 'Main propulsion or steering is lost, so that the vessel handles worse',
  'seaworthiness-impaired': "A vessel's seaworthiness or fitness for service is materially harmed",
  'rental-in-waters': 'The business rents a craft out',
  'vessel-disappears': 'A vessel disappears',
  'ask-counsel': 'Ask counsel',
  other: 'Something else, which no recorded fact answers',
};

const DAMAGED: Record<AmountTest, string> = {
  'damage-total': 'Damage, all property together, of',
  'damage-one-person': "Damage to any one person's property of",
  'damage-one-item': 'Damage to a vessel, or to any other one thing, of',
  'theft-or-vandalism': 'Theft or vandalism of a vessel (not an accident: a remark only), of',
};

/** `nameAmount(2000, 'at-least')` is `'$2,000 or more'`; the other comparison gives `'more than $2,000'`. */
export function nameAmount(amountUsd: number, comparison: Comparison): string {
  const amount = `$${amountUsd.toLocaleString('en-US')}`;
  return comparison === 'at-least' ? `${amount} or more` : `more than ${amount}`;
}

/** `nameTrigger({ test: 'incapacity', hours: 24, comparison: 'more-than', note: '' })` tells what must happen. */
export function nameTrigger(trigger: Trigger): string {
  const { test } = trigger;
  if (test === 'incapacity') {
    const hours = trigger.hours ?? 0;
    const unable = 'A person cannot do what they normally do';
    if (hours === 0) return `${unable}, for however short a time`;
    return trigger.comparison === 'at-least'
      ? `${unable}, for ${hours} hours or more`
      : `${unable}, for more than ${hours} hours`;
  }
  if (test === 'overdue') return `A rented craft is more than ${trigger.hours ?? 0} hours late`;
  if (trigger.withinHours !== undefined)
    return `${EVENTS[test as EmployeeTest]} ${nameWindow(trigger.withinHours)}`;
  if (isAmountTest(test)) return `${DAMAGED[test]} ${nameAmounts(trigger)}`;
  return EVENTS[test];
}

/** `nameWindow(720)` is `'within 30 days of the occurrence'`; up to two days are said in hours. */
export function nameWindow(hours: number): string {
  const words = hours > 48 && hours % 24 === 0 ? `${hours / 24} days` : `${hours} hours`;
  return `within ${words} of the occurrence`;
}

/** `more than $500, or by another source more than $2,000`; what was superseded is left out. */
function nameAmounts(trigger: Trigger): string {
  const amounts = (trigger.readings ?? [])
    .filter(({ basis }) => basis !== 'superseded')
    .map(({ amountUsd, comparison }) => nameAmount(amountUsd, comparison));
  return amounts.length > 0 ? [...new Set(amounts)].join(', or by another source ') : 'any amount';
}

function isAmountTest(test: TestName): test is AmountTest {
  return test in DAMAGED;
}

/** `nameTime({ days: 10, dayKind: 'business' })` is `'Within 10 business days'`. */
export function nameTime(time: LimitTime | null): string {
  if (time === null) return 'No time is stated';
  if ('immediate' in time) return 'At once';
  if ('hours' in time) return `Within ${time.hours} hours`;
  return `Within ${time.days} ${time.dayKind === 'business' ? 'business days' : 'days'}`;
}

const MONTHS = 'January February March April May June July August September October November December'.split(
  ' ',
);

/** `nameDate('2026-11-25')` is `'25 November 2026'`. */
export function nameDate(isoDate: string): string {
  const [year, month, day] = isoDate.split('-').map(Number);
  return `${day} ${MONTHS[(month ?? 1) - 1]} ${year}`;
}
