import { anyOf, truthOf, type Ternary, type Truth } from '../kernel/truth.js';
import { exceeds } from './evaluate-limits.js';
import type { OpenPoint } from './finding.js';
import {
  FALSE,
  personPoint as point,
  TRUE,
  unknownFinding as unknown,
  type PersonFinding,
} from './person-finding.js';
import type { Occurrence } from './read-occurrence.js';
import type { PersonReading } from './read-person.js';
import type { EmployeeTest, PersonTest, Trigger } from './rule-pack.js';

/** Tests of one person's harm, whoever they are. */
export type HarmTest = Exclude<PersonTest, EmployeeTest | 'injury-or-unfit'>;

/**
 * One person under one test. Missing is a disappearance and leaves death and every injury open; whoever
 * died counts as injured; a craft not back says only what the signs of harm say.
 */
export function testPerson(trigger: Trigger, reading: PersonReading, occurrence: Occurrence): PersonFinding {
  const test = trigger.test as HarmTest;
  switch (reading.outcome) {
    case 'unhurt':
      return FALSE;
    case 'missing':
      return test === 'disappearance' ? TRUE : whereabouts(reading, test);
    case 'not-back':
      return test === 'disappearance' ? signsOfHarm(reading) : whereabouts(reading, test);
    case 'unknown':
      return whereabouts(reading, test);
    case 'injured':
    case 'died':
      return testHarm(test, trigger, reading, occurrence);
  }
}

function testHarm(
  test: HarmTest,
  trigger: Trigger,
  reading: PersonReading,
  occurrence: Occurrence,
): PersonFinding {
  const died = reading.outcome === 'died';
  switch (test) {
    case 'death':
      return died ? TRUE : FALSE;
    case 'disappearance':
      return FALSE;
    case 'any-injury':
      return TRUE;
    case 'needs-first-aid':
      return careTest(reading, 'true');
    case 'needs-beyond-first-aid':
    case 'receives-beyond-first-aid':
      return careTest(reading, 'false');
    case 'medical-attention':
      return careTest(reading, 'unknown');
    case 'serious-injury':
      return seriousInjury(reading);
    case 'loss-of-consciousness':
      return answer(reading, 'lostConsciousness', reading.person.lostConsciousness, 'lose consciousness');
    case 'carried-from-scene':
      return answer(
        reading,
        'carriedFromScene',
        reading.person.carriedFromScene,
        'have to be carried from the scene',
      );
    case 'incapacity':
      return incapacity(reading, (hours) =>
        exceeds(hours, trigger.hours ?? 0, trigger.comparison ?? 'more-than'),
      );
    case 'incapacity-past-the-day':
      return incapacity(reading, (hours) =>
        occurrence.ends.some((end) => end + hours * 3_600_000 > occurrence.clock.nextMidnight(end)),
      );
  }
}

/** Nothing can be said before it is known what became of the person. */
function whereabouts(reading: PersonReading, test: HarmTest): PersonFinding {
  const answers =
    ['death', 'any-injury', 'disappearance'].includes(test) || reading.care === 'beyond-first-aid';
  return unknown([point(reading, 'outcome', `What became of ${reading.name}?`, answers, true)]);
}

function signsOfHarm(reading: PersonReading): PersonFinding {
  const value = truthOf(reading.person.signsOfHarm);
  if (value !== 'unknown') return { value, open: [] };
  return unknown([
    point(reading, 'outcome', `What became of ${reading.name}?`, true, true),
    point(reading, 'signsOfHarm', `Do the circumstances point to death or injury of ${reading.name}?`, true),
  ]);
}

/**
 * Tests of care. `onFirstAid` is what "first aid only" means to the test: true where first aid suffices,
 * false where the text says beyond first aid, unknown where the text names no exception, a question of law.
 * Who died more than 24 hours later counts as treated beyond first aid, unless no care was needed.
 */
function careTest(reading: PersonReading, onFirstAid: Truth): PersonFinding {
  const { care } = reading;
  if (care === 'beyond-first-aid') return TRUE;
  if (care === 'none') return FALSE;
  if (reading.outcome === 'died' && reading.lateDeath === 'true') return TRUE;
  const value = care === 'first-aid' ? onFirstAid : 'unknown';
  if (value === 'true') return TRUE;
  const open: OpenPoint[] = [];
  if (care === 'unknown') {
    open.push(
      point(reading, 'care', `What care did ${reading.name} need: none, first aid, or more?`, true, true),
    );
  }
  if (reading.outcome === 'died' && reading.lateDeath === 'unknown') {
    open.push(point(reading, 'diedAt', `When did ${reading.name} die?`, true));
  }
  if (onFirstAid === 'unknown') open.push(firstAidAsMedicalAttention(care === 'first-aid'));
  const undecided = value === 'unknown' || (reading.outcome === 'died' && reading.lateDeath === 'unknown');
  return undecided ? unknown(open) : FALSE;
}

function firstAidAsMedicalAttention(proves: boolean): OpenPoint {
  return {
    fact: null,
    text: 'Does first aid alone count as medical attention here? The law read names no exception for it.',
    proves,
    denies: false,
  };
}

/** The words are not defined in the texts read: some harms are serious by any reading, first aid by none. */
function seriousInjury(reading: PersonReading): PersonFinding {
  const { person } = reading;
  const signs = [
    ['amputation', person.amputation, 'Was any part of a limb lost by'],
    ['eyeLoss', person.eyeLoss, 'Was an eye lost by'],
    ['inpatient', person.inpatient, 'Was there an in-patient admission to hospital of'],
    ['lostConsciousness', person.lostConsciousness, 'Was consciousness lost by'],
  ] as const;
  const known = anyOf(signs.map(([, value]) => truthOf(value)));
  if (known === 'true') return TRUE;
  const late = reading.outcome === 'died' && reading.lateDeath !== 'false' && reading.care !== 'none';
  if (!late && (reading.care === 'none' || reading.care === 'first-aid')) return FALSE;
  const open = signs
    .filter(([, value]) => truthOf(value) === 'unknown')
    .map(([fact, , words]) => point(reading, fact, `${words} ${reading.name}?`, true));
  if (reading.care === 'unknown') {
    open.push(
      point(reading, 'care', `What care did ${reading.name} need: none, first aid, or more?`, false, true),
    );
  }
  open.push({
    fact: null,
    text: 'Is this a serious injury? The law read does not define the words.',
    proves: true,
    denies: false,
  });
  return unknown(open);
}

function answer(
  reading: PersonReading,
  fact: string,
  value: Ternary | undefined,
  words: string,
): PersonFinding {
  const truth = truthOf(value);
  return truth === 'unknown'
    ? unknown([point(reading, fact, `Did ${reading.name} ${words}?`, true)])
    : { value: truth, open: [] };
}

function incapacity(reading: PersonReading, meets: (hours: number) => boolean): PersonFinding {
  const hours = reading.person.incapacitatedHours;
  if (typeof hours === 'number') return meets(hours) ? TRUE : FALSE;
  return unknown([
    point(
      reading,
      'incapacitatedHours',
      `For how many hours was ${reading.name} unable to do what they normally do?`,
      true,
    ),
  ]);
}
