import { earliestClock } from '../../../shared/decision/decision.js';
import type { Question } from '../../../shared/determination/determination.js';
import { nameDuty } from './compare-determinations.js';
import type { DutyView } from './service-answers.js';

/** A question once, with the reports that it could decide. */
export interface AskedQuestion extends Question {
  /** Part of an address in the page. */
  readonly anchor: string;
  readonly duties: readonly string[];
}

/** A question is the same one for several duties where it is about the same fact, or a point of law in the same words. */
export function questionKey({ fact, text }: Question): string {
  return fact ?? ` ${text}`;
}

/**
 * The questions of all duties, each once: those of the duty with the earliest clock first, each duty's in its own order.
 * @example listQuestions(duties)[0] // { fact: '/people/0/care', text: …, anchor: 'question-1', duties: ['Accident report, Texas (PWC-7)'] }
 */
export function listQuestions(duties: readonly DutyView[]): AskedQuestion[] {
  const asked = new Map<string, { question: Question; duties: Set<string> }>();
  for (const { duty, vessel, questions } of [...duties].sort(byClock)) {
    for (const question of questions) {
      const key = questionKey(question);
      const known = asked.get(key) ?? { question, duties: new Set<string>() };
      known.duties.add(nameDuty(duty, vessel));
      asked.set(key, known);
    }
  }
  return [...asked.values()].map(({ question, duties: names }, index) => ({
    fact: question.fact,
    text: question.text,
    anchor: `question-${index + 1}`,
    duties: [...names],
  }));
}

/** The earliest clock first, what has none last; what is settled behind what is not. */
export function byClock(one: DutyView, other: DutyView): number {
  return (
    Number(isSettled(one)) - Number(isSettled(other)) ||
    (earliestClock(one) ?? Infinity) - (earliestClock(other) ?? Infinity) ||
    0
  );
}

/** Nothing is to be done about it on the facts as they stand. */
export function isSettled({ state, outcome, decision }: DutyView): boolean {
  return (
    state === 'filed' ||
    decision?.kind === 'no-report' ||
    (outcome === 'not-required' && state !== 'supplement-due')
  );
}
