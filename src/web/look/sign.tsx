import type { Outcome } from '../../../shared/determination/determination.js';
import type { Ternary, Truth } from '../../../shared/kernel/truth.js';

export type SignOf = Outcome | Truth | Ternary | 'not-applicable';

const FULL = 'M2 2h12v12H2z';
const HALF = 'M2 2h12L2 14z';

/** Full: yes or required. Half: not known yet. Empty: no or not required. */
const INSIDE: Readonly<Record<SignOf, string | null>> = {
  required: FULL,
  true: FULL,
  yes: FULL,
  undetermined: HALF,
  unknown: HALF,
  'not-required': null,
  false: null,
  no: null,
  'not-applicable': null,
};

/**
 * The square that stands beside a word, one sign for a fact, a trigger, a duty and an item of a report; struck where it
 * does not apply. It is drawn, not coloured in, so that it survives printing and needs no colour; the word beside it
 * carries the meaning for a screen reader.
 */
export function Sign({ of }: { of: SignOf }) {
  const inside = INSIDE[of];
  return (
    <svg class="sign" viewBox="0 0 16 16" aria-hidden="true">
      {inside !== null && <path class="sign-inside" d={inside} />}
      <path class="sign-edge" d={FULL} />
      {of === 'not-applicable' && <path class="sign-edge" d="M2 14L14 2" />}
    </svg>
  );
}
