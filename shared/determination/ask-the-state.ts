import type { PackBasis } from '../law/rule-pack.js';
import type { IncidentFacts } from '../record/incident-facts.js';
import type { Duty, Question } from './determination.js';

/** Why nothing can be said, and of whom to ask. */
export interface AskInput {
  readonly jurisdiction: string;
  readonly kind: string;
  readonly why: string;
  readonly packBasis: PackBasis;
  readonly authority: string | null;
  readonly facts: IncidentFacts;
  readonly questions: readonly Question[];
  /** Whom to ask, where it is not the state's boating law administrator. */
  readonly whom?: string;
}

const ADMINISTRATOR = "the state's boating law administrator";

/**
 * A duty of which the law at hand says nothing: undetermined, with the advice to ask now. There
 * is never a silent fall-back on another law, and no clock is shown that nobody has read.
 */
export function askTheState(input: AskInput): Duty {
  const { jurisdiction, kind, why, facts, whom = ADMINISTRATOR } = input;
  return {
    id: `${jurisdiction}/${kind}`,
    jurisdiction,
    kind,
    outcome: 'undetermined',
    reasons: [{ trigger: 'law', value: 'unknown', text: `${why} Ask ${whom} now.` }],
    questions: [...input.questions],
    immediate: false,
    dueAt: null,
    dueAtIfRequired: null,
    dueBasis: null,
    authority: input.authority,
    reporters: (facts.vessels.length > 0 ? facts.vessels.map(({ id }) => id) : [null]).map((vessel) => ({
      vessel,
      who: 'operator-or-owner',
      text: `The operator or the owner: ask ${whom} who must report.`,
    })),
    citations: [],
    packBasis: input.packBasis,
  };
}

/** The question of law that such a duty leaves. */
export function askNow(name: string, whom = ADMINISTRATOR): Question {
  return { fact: null, text: `Does ${name} call for a report here? Ask ${whom} now.` };
}
