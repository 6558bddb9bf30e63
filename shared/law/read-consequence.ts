import type { Ternary, Truth } from '../kernel/truth.js';
import type { IncidentFacts } from '../record/incident-facts.js';
import type { Consequence } from '../record/weigh-consequence.js';
import { zoneClock } from '../time/zone-clock.js';
import { readDamage } from './read-damage.js';
import { readOccurrence } from './read-occurrence.js';
import type { PersonTest } from './rule-pack.js';
import { readPeople, testPeople } from './test-people.js';

const ANSWER: Readonly<Record<Truth, Ternary>> = { true: 'yes', false: 'no', unknown: 'unknown' };

/**
 * What came of an incident, as far as it decides about its craft, by the same tests of people as a determination: a
 * list of people that is not complete leaves everything but what it proves unknown.
 * @param claimed whether somebody has claimed in writing, which the facts of an occurrence do not say
 * @example readConsequence({ ...facts, peopleAssessment: 'not-yet', people: [] }, false).died // 'unknown'
 */
export function readConsequence(facts: IncidentFacts, claimed: boolean): Consequence {
  // The zone decides about days alone, and nothing here is about days.
  const occurrence = readOccurrence(facts, zoneClock('UTC'));
  const people = readPeople(occurrence);
  const answerTo = (test: PersonTest): Ternary =>
    ANSWER[testPeople({ test, note: '' }, people, occurrence).value];
  return {
    died: answerTo('death'),
    missing: answerTo('disappearance'),
    beyondFirstAid: answerTo('needs-beyond-first-aid'),
    hurt: answerTo('any-injury'),
    claimed,
    damage: facts.damageAssessment === 'complete' ? totalDamage(readDamage(occurrence, 'counts')) : null,
  };
}

function totalDamage(items: readonly { low: number; high: number }[]): Consequence['damage'] {
  const lowCents = items.reduce((sum, { low }) => sum + low, 0);
  const highCents = items.reduce((sum, { high }) => sum + high, 0);
  return Number.isFinite(highCents) ? { lowCents, highCents } : null;
}
