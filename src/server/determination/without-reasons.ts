import type { Determination, Duty } from '../../../shared/determination/determination.js';
import type { IncidentFacts, ScopeAnswer } from '../../../shared/record/incident-facts.js';
import { REASON_WITHDRAWN } from './signed-answer.js';

/** The words of a determination that people may withdraw: its facts, and what its trace tells of them. */
interface Told {
  readonly facts: IncidentFacts;
  readonly determination: Determination;
}

/**
 * A determination without the reasons of some answers whether it is reportable at all, also where its trace quotes them;
 * the same one where it holds none of them. It answers the same: no outcome rests on the words of a reason.
 * @param indices of the answers, of which the oldest is the first
 */
export function withoutReasons<T extends Told>(told: T, indices: readonly number[]): T {
  const { scopeAnswers = [] } = told.facts;
  const gone = indices.flatMap((index) => scopeAnswers[index] ?? []);
  if (gone.length === 0) return told;
  const { aids, duties } = told.determination;
  return {
    ...told,
    facts: { ...told.facts, scopeAnswers: scopeAnswers.map((one) => silent(one, gone)) },
    determination: {
      ...told.determination,
      ...(aids !== undefined && {
        aids: aids.map((aid) => ({ ...aid, answers: aid.answers.map((one) => silent(one, gone)) })),
      }),
      duties: duties.map((duty) => unquoted(duty, gone)),
    },
  };
}

function silent(answer: ScopeAnswer, gone: readonly ScopeAnswer[]): ScopeAnswer {
  const is = gone.some(
    ({ aid, at, reason }) => aid === answer.aid && at === answer.at && reason === answer.reason,
  );
  return is ? { ...answer, reason: REASON_WITHDRAWN } : answer;
}

function unquoted(duty: Duty, gone: readonly ScopeAnswer[]): Duty {
  const reasons = duty.reasons.map((reason) => {
    const quoted = gone.find(
      (one) => reason.trigger === `applies/answer-${one.aid}` && reason.text.endsWith(one.reason),
    );
    if (quoted === undefined) return reason;
    return { ...reason, text: reason.text.slice(0, -quoted.reason.length) + REASON_WITHDRAWN };
  });
  return { ...duty, reasons };
}
