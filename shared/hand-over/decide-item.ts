import type { Masking, Profile } from './hand-over-profile.js';
import type { SenderChoices } from './sender-choices.js';

/** One field, file or other thing that may leave. */
export interface Item {
  /** Of `forms/hand-over/fields.json`; undefined where nobody placed it, and then it stays. */
  readonly kind: string | undefined;
  /** How a choice names it. */
  readonly id: string;
  /** The person of the record whose own it is, where it is somebody's. */
  readonly owner?: string | undefined;
}

/** What becomes of an item, why, and who wanted it so. */
export type Verdict = (
  { readonly does: 'goes' | 'stays' } | { readonly does: 'masked'; readonly how: Masking }
) & {
  readonly reason: string;
  readonly by: 'profile' | 'choice' | 'override';
};

/**
 * Decides one item under a profile and what the sender chose. What was chosen for the item itself comes before what was
 * chosen for its kind; having more go than the profile would is an override, unless the profile leaves it to the sender.
 * Notes that a lawyer asked for are overridden by nobody.
 * @example decideItem({ kind: 'privileged', id: 'privileged' }, insurer, NO_CHOICES).does // 'stays'
 */
export function decideItem({ kind, id, owner }: Item, profile: Profile, sender: SenderChoices): Verdict {
  const decision = kind === undefined ? undefined : profile.decisions[kind];
  if (decision === undefined) return { does: 'stays', reason: UNDECIDED, by: 'profile' };
  const { choices, person } = sender;
  if (kind === 'privileged' && profile.recipient !== 'counsel')
    return { does: 'stays', reason: decision.reason, by: 'profile' };
  const chosen = choices.find(({ what }) => what === id) ?? choices.find(({ what }) => what === kind);
  if (chosen?.does === 'stays') return { does: 'stays', reason: chosen.reason ?? HELD_BACK, by: 'choice' };
  if (chosen !== undefined && decision.does !== 'goes') {
    const left = decision.does === 'stays' && decision.choice === true;
    return { does: 'goes', reason: chosen.reason ?? CHOSEN, by: left ? 'choice' : 'override' };
  }
  const { reason } = decision;
  if (decision.does === 'masked') return { does: 'masked', how: decision.how, reason, by: 'profile' };
  if (decision.does === 'stays') return { does: 'stays', reason, by: 'profile' };
  if (decision.own !== true || (owner !== undefined && owner === person)) {
    return { does: 'goes', reason, by: 'profile' };
  }
  if (chosen !== undefined) return { does: 'goes', reason: chosen.reason ?? CHOSEN, by: 'override' };
  return { does: 'stays', reason, by: 'profile' };
}

const UNDECIDED = 'Nobody has decided about it, and so it stays.';
const HELD_BACK = 'The sender held it back.';
const CHOSEN = 'The sender chose that it goes.';
