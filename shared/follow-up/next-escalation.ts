/** Whom an urgent task was put to, and whether somebody has said "I have it". Instants in epoch milliseconds. */
export interface EscalationState {
  readonly raisedAt: number;
  readonly asked: readonly { readonly accountId: string; readonly at: number }[];
  readonly acknowledgedAt: number | null;
}

export type Escalation =
  | { readonly next: 'none'; readonly why: 'acknowledged' | 'nobody-on-roster' }
  | { readonly next: 'wait'; readonly until: number }
  | { readonly next: 'ask'; readonly accountId: string };

/** How long one person has to answer. Common practice, no source. */
export const ANSWER_MINUTES = 10;

/**
 * Who is asked next. Everybody on the roster is asked in its order, then the first again, until somebody acknowledges:
 * it does not end by itself. Somebody who has left the roster is passed over.
 * @param roster ids of the accounts on duty, in the order in which they are asked
 * @example nextEscalation({ raisedAt: 0, asked: [], acknowledgedAt: null }, ['a', 'b'], 0) // { next: 'ask', accountId: 'a' }
 */
export function nextEscalation(state: EscalationState, roster: readonly string[], now: number): Escalation {
  if (state.acknowledgedAt !== null) return { next: 'none', why: 'acknowledged' };
  const [first] = roster;
  if (first === undefined) return { next: 'none', why: 'nobody-on-roster' };
  const last = state.asked.at(-1);
  if (last === undefined) return { next: 'ask', accountId: first };
  const until = last.at + ANSWER_MINUTES * 60_000;
  // Whoever has gone home does not answer: there is nothing to wait for.
  if (now < until && roster.includes(last.accountId)) return { next: 'wait', until };
  return { next: 'ask', accountId: leastAsked(state, roster, first) };
}

/** Of those who were asked least often the first: newcomers come before anybody is asked again. */
function leastAsked({ asked }: EscalationState, roster: readonly string[], first: string): string {
  const times = (id: string): number => asked.filter(({ accountId }) => accountId === id).length;
  return roster.reduce((best, id) => (times(id) < times(best) ? id : best), first);
}
