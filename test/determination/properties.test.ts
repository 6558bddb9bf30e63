import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Determination, Duty } from '../../shared/determination/determination.js';
import { determine } from '../../shared/determination/determine.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { arbitraryFacts } from './arbitrary-facts.js';
import { completeFacts, findUnknowns } from './complete-facts.js';
import {
  asks,
  asksLaw,
  awaitsReach,
  comparable,
  type CompletedDuty,
  decides,
  firstDue,
} from './hold-against.js';
import { determineFacts, geography, nothingKnown, packs } from './situation.js';

const STATES = packs.map(({ jurisdiction }) => jurisdiction).filter((code) => code !== 'US');
const MOST_COMPLETIONS = 400;

/**
 * Over the accident law of the federal pack and the document's own state only: the completions are many, and do not
 * answer the facts of other matters, which `other-properties.test.ts` holds against completions of their own.
 */
function determineHere(facts: IncidentFacts): Determination {
  const here = packs.filter(
    ({ jurisdiction, subject }) =>
      subject === undefined && ['US', ...(facts.place.states ?? [])].includes(jurisdiction),
  );
  return determine(facts, { packs: here, geography, source: 'property' });
}

function eachDuty(facts: IncidentFacts, check: (duty: Duty, later: readonly CompletedDuty[]) => void): void {
  const completions = completeFacts(facts, MOST_COMPLETIONS);
  fc.pre(completions !== null);
  const determined = completions.map((completion) => ({
    completion,
    determination: determineHere(completion.facts),
  }));
  for (const duty of determineHere(facts).duties) {
    const later = determined.flatMap(({ completion, determination }) =>
      determination.duties.filter(({ id }) => id === duty.id).map((one) => ({ completion, duty: one })),
    );
    check(duty, later);
  }
}

/** Found again, whoever was missing takes the duty with them: that is a changed fact, not a new one. */
const someoneMissing = ({ people }: IncidentFacts): boolean =>
  people.some(({ outcome, signsOfHarm }) => outcome === 'missing' || signsOfHarm === 'yes');

describe('a determination and the completions of its facts', () => {
  it('holds once decided, and is undecided only where completions differ', () => {
    fc.assert(
      fc.property(arbitraryFacts(STATES), (facts) => {
        eachDuty(facts, (duty, later) => {
          const outcomes = new Set(later.map((one) => one.duty.outcome));
          if (duty.outcome === 'required' && someoneMissing(facts)) return;
          if (duty.outcome !== 'undetermined') {
            expect([...outcomes], duty.id).toEqual([duty.outcome]);
          } else if (
            !asks(duty, '/casualtyTypes') &&
            [duty, ...later.map((one) => one.duty)].every((one) => !asksLaw(one))
          ) {
            // Whatever happened was a casualty of some type, so that question has but one side.
            expect(outcomes.size, duty.id).toBeGreaterThan(1);
          }
        });
      }),
      { numRuns: 100 },
    );
  });

  it('never shows a deadline later than one that a completion yields', () => {
    fc.assert(
      fc.property(arbitraryFacts(STATES), (facts) => {
        eachDuty(facts, (duty, later) => {
          for (const { duty: one } of later) {
            expect(firstDue(duty), duty.id).toBeLessThanOrEqual(firstDue(one));
          }
        });
      }),
      { numRuns: 100 },
    );
  });

  it('asks exactly what can change the outcome or bring the deadline forward', () => {
    fc.assert(
      fc.property(arbitraryFacts(STATES), (facts) => {
        fc.pre(!someoneMissing(facts));
        eachDuty(facts, (duty, later) => {
          if (asksLaw(duty) || awaitsReach(duty) || later.some((one) => one.duty.outcome === 'undetermined'))
            return;
          const asked = duty.questions.flatMap(({ fact }) => (comparable(fact) ? [fact] : [])).sort();
          const matter = findUnknowns(facts)
            .map(({ fact }) => fact)
            .filter((fact) => comparable(fact) && decides(fact, duty, later))
            .sort();
          expect(asked, duty.id).toEqual(matter);
        });
      }),
      { numRuns: 120 },
    );
  });
});

describe('a determination and more facts', () => {
  it('never takes back a required duty when an unknown is answered', () => {
    fc.assert(
      fc.property(arbitraryFacts(STATES), fc.nat(), fc.nat(), (facts, which, how) => {
        fc.pre(!someoneMissing(facts));
        const unknowns = findUnknowns(facts);
        fc.pre(unknowns.length > 0);
        const unknown = unknowns[which % unknowns.length];
        const answered = structuredClone(facts);
        unknown?.answers[how % unknown.answers.length]?.(answered);
        const after = determineHere(answered);
        for (const duty of determineHere(facts).duties.filter(({ outcome }) => outcome === 'required')) {
          expect(after.duties.find(({ id }) => id === duty.id)?.outcome, duty.id).toBe('required');
        }
      }),
      { numRuns: 300 },
    );
  });

  it('never removes a duty when there is more damage', () => {
    const rank = { 'not-required': 0, undetermined: 1, required: 2 };
    fc.assert(
      fc.property(arbitraryFacts(STATES), fc.integer({ min: 0, max: 5_000_00 }), (facts, cents) => {
        const more = structuredClone(facts);
        more.damage.push({ id: 'more', of: 'vessel', amount: cents / 100 });
        const after = determineHere(more);
        for (const duty of determineHere(facts).duties) {
          const now = after.duties.find(({ id }) => id === duty.id);
          expect(rank[now?.outcome ?? 'not-required'], duty.id).toBeGreaterThanOrEqual(rank[duty.outcome]);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('never widens the outcome when a range is narrowed', () => {
    fc.assert(
      fc.property(arbitraryFacts(STATES), fc.nat(1000), fc.nat(1000), (facts, from, to) => {
        const narrowed = structuredClone(facts);
        for (const item of narrowed.damage) {
          if (typeof item.amount !== 'object') continue;
          const { low, high } = item.amount;
          const at = (share: number) => Math.round((low + ((high - low) * share) / 1000) * 100) / 100;
          item.amount = { low: at(Math.min(from, to)), high: at(Math.max(from, to)) };
        }
        const after = determineHere(narrowed);
        for (const duty of determineHere(facts).duties.filter(({ outcome }) => outcome !== 'undetermined')) {
          expect(after.duties.find(({ id }) => id === duty.id)?.outcome, duty.id).toBe(duty.outcome);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('leaves only law and people not yet found when every question is answered', () => {
    fc.assert(
      fc.property(arbitraryFacts(STATES), fc.infiniteStream(fc.nat()), (facts, choices) => {
        const answered = structuredClone(facts);
        const done = new Set<string>();
        for (let round = 0; round < 40; round += 1) {
          const asked = new Set(
            determineHere(answered).duties.flatMap(({ questions }) => questions.map(({ fact }) => fact)),
          );
          const next = findUnknowns(answered).find(({ fact }) => asked.has(fact) && !done.has(fact));
          if (next === undefined) break;
          done.add(next.fact);
          next.answers[choices.next().value % next.answers.length]?.(answered);
        }
        const missing = answered.people.flatMap(({ outcome }, at) =>
          outcome === 'missing' ? [`/people/${at}/outcome`] : [],
        );
        for (const duty of determineHere(answered).duties.filter(
          ({ outcome }) => outcome === 'undetermined',
        )) {
          const left = duty.questions
            .map(({ fact }) => fact)
            .filter((fact) => fact !== null && !missing.includes(fact));
          expect(left, duty.id).toEqual([]);
          expect(duty.questions.length, duty.id).toBeGreaterThan(0);
        }
      }),
      { numRuns: 300 },
    );
  });
});

describe('a document with everything unknown', () => {
  it.each(['nowhere', ...STATES])('never yields "not required": %s', (state) => {
    const facts = nothingKnown();
    if (state !== 'nowhere') facts.place.states = [state];
    const { duties } = determineFacts(facts);
    // A notice to the vessels that a state numbers is not due inside that state, whatever else is unknown.
    const open = duties.filter(({ id }) => id !== 'us-md/out-of-state-report');
    expect(
      open.map(({ id, outcome }) => [id, outcome]).filter(([, outcome]) => outcome !== 'undetermined'),
    ).toEqual([]);
    expect(open.length).toBeGreaterThanOrEqual(3);
  });
});
