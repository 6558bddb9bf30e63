import type { ScopeAnswer } from '../../../shared/record/incident-facts.js';

/** An answer whether it is reportable at all, as somebody signed it. */
export interface SignedAnswer extends ScopeAnswer {
  readonly id: string;
  readonly account: string;
  readonly role: string;
}

/** The same as the record keeps it: the words of its reason may have been withdrawn. */
export type KeptAnswer = Omit<SignedAnswer, 'reason'> & { readonly reason?: string };

/** Stands where the reason stood, so that facts of an incident stay facts that can be determined. */
export const REASON_WITHDRAWN = 'The reason was withdrawn.';

/** What is a fact for the determination. */
export function scopeAnswerOf({
  aid,
  jurisdictions,
  answer,
  reason = REASON_WITHDRAWN,
  by,
  at,
}: KeptAnswer): ScopeAnswer {
  return { aid, jurisdictions, answer, reason, by, at };
}
