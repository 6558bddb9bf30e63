import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Determination, Duty } from '../../shared/determination/determination.js';
import { determine } from '../../shared/determination/determine.js';
import { packCode } from '../../shared/law/pack-code.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { arbitraryMatter, MATTERS } from './arbitrary-matters.js';
import { completeFacts } from './complete-facts.js';
import { findOtherUnknowns } from './complete-other-facts.js';
import {
  asks,
  asksLaw,
  awaitsReach,
  comparable,
  type CompletedDuty,
  decides,
  firstDue,
} from './hold-against.js';
import { geography, packs } from './situation.js';

const MOST_COMPLETIONS = 300;

/** With the federal pack, without which nothing is determined, and the law of one matter. */
function determineMatter(code: string, facts: IncidentFacts): Determination {
  const here = packs.filter((pack) => packCode(pack) === 'US' || packCode(pack) === code);
  return determine(facts, { packs: here, geography, source: 'property' });
}

/** What nothing calls up any more is not required. */
function dutyIn(determination: Determination, { id }: Duty, none: Duty): Duty {
  return determination.duties.find((duty) => duty.id === id) ?? none;
}

const notRaised = (duty: Duty): Duty => ({
  ...duty,
  ...{ outcome: 'not-required', dueAt: null, dueAtIfRequired: null, questions: [], reasons: [] },
});

describe.each(MATTERS)('the law of another matter and the completions of its facts: %s', (code) => {
  it('holds once decided, is open only where they differ, is never later, asks what decides and nothing known', () => {
    fc.assert(
      fc.property(arbitraryMatter(code), (facts) => {
        const completions = completeFacts(facts, MOST_COMPLETIONS, findOtherUnknowns);
        fc.pre(completions !== null);
        const completed = completions.map((completion) => ({
          completion,
          determination: determineMatter(code, completion.facts),
        }));
        for (const duty of determineMatter(code, facts).duties.filter(({ pack }) => pack === code)) {
          const none = notRaised(duty);
          const later = completed.map(({ completion, determination }) => ({
            completion,
            duty: dutyIn(determination, duty, none),
          }));
          holdOutcome(duty, later);
          for (const one of later) expect(firstDue(duty), duty.id).toBeLessThanOrEqual(firstDue(one.duty));
          holdQuestions(duty, later, facts);
        }
      }),
      { numRuns: 40 },
    );
  });
});

function holdOutcome(duty: Duty, later: readonly CompletedDuty[]): void {
  const outcomes = new Set(later.map((one) => one.duty.outcome));
  if (duty.outcome !== 'undetermined') expect([...outcomes], duty.id).toEqual([duty.outcome]);
  else if (
    !asks(duty, '/casualtyTypes') &&
    [duty, ...later.map((one) => one.duty)].every((one) => !asksLaw(one))
  ) {
    expect(outcomes.size, duty.id).toBeGreaterThan(1);
  }
}

function holdQuestions(duty: Duty, later: readonly CompletedDuty[], facts: IncidentFacts): void {
  if (asksLaw(duty) || awaitsReach(duty) || later.some((one) => one.duty.outcome === 'undetermined')) return;
  const asked = duty.questions.flatMap(({ fact }) => (comparable(fact) ? [fact] : []));
  const unknown = findOtherUnknowns(facts).flatMap(({ fact }) => (comparable(fact) ? [fact] : []));
  // A harm has a clock of its own, so that its hour is asked although another harm of the same person may come first.
  expect(unknown, duty.id).toEqual(expect.arrayContaining(asked));
  expect(asked, duty.id).toEqual(
    expect.arrayContaining(unknown.filter((fact) => decides(fact, duty, later))),
  );
}
