import { isStateCode } from '../place/state-codes.js';

/** Prefixes that are not the state's postal code: 33 CFR part 173, appendix A. All others are. */
const OWN_PREFIXES: Readonly<Record<string, string>> = {
  CA: 'CF',
  CO: 'CL',
  DE: 'DL',
  HI: 'HA',
  KS: 'KA',
  MA: 'MS',
  MI: 'MC',
  MP: 'CM',
  MS: 'MI',
  NE: 'NB',
  WA: 'WN',
  WI: 'WS',
};

/**
 * What a state's vessels carry: `prefixOfState('MI')` is `'MC'`, `prefixOfState('TX')` is `'TX'`; null for
 * what is not a state's USPS code.
 */
export function prefixOfState(state: string): string | null {
  if (!isStateCode(state)) return null;
  return Object.hasOwn(OWN_PREFIXES, state) ? (OWN_PREFIXES[state] ?? null) : state;
}

/**
 * USPS code of the state whose vessels carry a prefix: `stateOfPrefix('MI')` is `'MS'`, Mississippi;
 * `stateOfPrefix('CA')` is null, as no state uses it.
 */
export function stateOfPrefix(prefix: string): string | null {
  const own = Object.entries(OWN_PREFIXES).find(([, carried]) => carried === prefix);
  if (own !== undefined) return own[0];
  return prefixOfState(prefix) === prefix ? prefix : null;
}
