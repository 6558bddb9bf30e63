import { jsonPointer } from '../kernel/json-pointer.js';
import { anyOf, truthOf, type Truth } from '../kernel/truth.js';
import type { IncidentFacts } from '../record/incident-facts.js';
import { NOTHING_SPECIAL, type TestResult } from './finding.js';
import type { Occurrence } from './read-occurrence.js';
import type { EventTest } from './rule-pack.js';

/** A fact of the whole occurrence, and the kinds of casualty that show it, or without which it is not asked. */
interface EventRule {
  readonly words: string;
  readonly fact?: keyof IncidentFacts & ('oilSheen' | 'bridgeStruck' | EventFact);
  readonly question?: string;
  readonly shownBy: readonly string[];
  /** Where nobody says a word of it, and the kind of casualty is known and is none of these, it did not happen. */
  readonly onlyIn?: readonly string[];
}

type EventFact = 'propulsionOrSteeringLost' | 'seaworthinessImpaired';

const RULES: Readonly<Record<EventTest, EventRule>> = {
  'oil-sheen': {
    words: 'A film, sheen or discoloration on the water or the shore',
    fact: 'oilSheen',
    question: 'Was there a film, sheen or discoloration of oil or fuel on the water or the shore?',
    shownBy: [],
  },
  // A grounding that nobody intended is the usual one; none that was intended is told by any fact.
  grounding: { words: 'A grounding', shownBy: ['grounding'], onlyIn: ['grounding'] },
  'bridge-strike': {
    words: 'A bridge was struck',
    fact: 'bridgeStruck',
    question: 'Was a bridge struck?',
    shownBy: [],
    onlyIn: ['collision-with-fixed-object'],
  },
  'propulsion-or-steering-lost': {
    words: 'Propulsion or steering was lost, so that a vessel handled worse',
    fact: 'propulsionOrSteeringLost',
    question: 'Was propulsion or steering lost, so that a vessel handled worse?',
    shownBy: [],
  },
  'seaworthiness-impaired': {
    words: 'Seaworthiness or fitness for service was materially harmed',
    fact: 'seaworthinessImpaired',
    question: "Was a vessel's seaworthiness or fitness for service materially harmed?",
    shownBy: [
      'fire-or-explosion-fuel',
      'fire-or-explosion-other',
      'fire-or-explosion-unknown-origin',
      'flooding-or-swamping',
      'sinking',
      'capsizing',
    ],
  },
};

/** `isEventTest('oil-sheen')` is true. */
export function isEventTest(test: string): test is EventTest {
  return test in RULES;
}

/** What happened, by one fact of the occurrence or by the kind of casualty. */
export function testEvent(test: EventTest, { facts }: Occurrence): TestResult {
  const { words, fact, question, shownBy, onlyIn } = RULES[test];
  const types = facts.casualtyTypes.filter((type) => type !== 'unknown');
  const said = fact === undefined ? 'unknown' : truthOf(facts[fact]);
  const unsaid = fact === undefined || facts[fact] === undefined;
  const isOther =
    unsaid && types.length > 0 && onlyIn !== undefined && !types.some((type) => onlyIn.includes(type));
  const value: Truth =
    said !== 'unknown'
      ? said
      : types.some((type) => shownBy.includes(type))
        ? 'true'
        : isOther
          ? 'false'
          : 'unknown';
  const point =
    fact === undefined || question === undefined
      ? { fact: '/casualtyTypes', text: 'What happened?' }
      : { fact: `/${fact}`, text: question };
  return plainResult(words, value, [{ ...point, denies: true }]);
}

export function testCompleteLoss({ facts }: Occurrence): TestResult {
  const losses = facts.vessels.map((vessel) => truthOf(vessel.completeLoss));
  const value = losses.length === 0 ? 'unknown' : anyOf(losses);
  const points = facts.vessels.flatMap((vessel, index) =>
    losses[index] === 'unknown'
      ? [{ fact: jsonPointer(['vessels', index, 'completeLoss']), text: `Is ${vessel.id} a complete loss?` }]
      : [],
  );
  if (losses.length === 0) points.push({ fact: '/vessels', text: 'Which craft were involved?' });
  return plainResult('Complete loss of a vessel', value, points);
}

export function testCasualty({ facts }: Occurrence): TestResult {
  const value = facts.casualtyTypes.some((type) => type !== 'unknown') ? 'true' : 'unknown';
  return plainResult('A collision or other casualty', value, [
    { fact: '/casualtyTypes', text: 'What happened?' },
  ]);
}

function plainResult(
  words: string,
  value: Truth,
  points: readonly { fact: string; text: string; denies?: boolean }[],
): TestResult {
  const answer = { true: 'yes', false: 'no', unknown: 'not known yet' }[value];
  return {
    value,
    text: `${words}: ${answer}.`,
    holding: value === 'true' ? [NOTHING_SPECIAL] : [],
    open:
      value === 'unknown'
        ? points.map(({ fact, text, denies = false }) => ({
            point: { fact, text, proves: true, denies },
            clock: NOTHING_SPECIAL,
          }))
        : [],
  };
}
