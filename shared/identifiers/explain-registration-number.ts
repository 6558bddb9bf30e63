import { STATE_NAMES, isStateCode } from '../place/state-codes.js';
import { prefixOfState, stateOfPrefix } from './registration-prefixes.js';

export interface RegistrationNumberReading {
  asWritten: string;
  /** In capitals, groups separated by blanks as 33 CFR 173.27 has them on the hull; as written when unreadable. */
  number: string;
  prefix: string | null;
  /** USPS code of the state of the prefix. */
  state: string | null;
  numerals: string | null;
  suffix: string | null;
  /** A tender carries its parent vessel's number with a 1 behind: 33 CFR 173.27(d). */
  tender: boolean;
  explanation: string[];
  /** What is odd about it. A number is never refused. */
  remarks: string[];
}

/**
 * Takes a vessel's registration number apart by 33 CFR 174.23 and names the state of its prefix, which for
 * twelve states and territories is not the postal code.
 * @example explainRegistrationNumber('MI-1234-AB').state // 'MS'
 * @example explainRegistrationNumber('DC 5678 EF 1').tender // true
 */
export function explainRegistrationNumber(asWritten: string): RegistrationNumberReading {
  const bare = asWritten.toUpperCase().replace(/[\s.‐‑–—-]/g, '');
  const [, prefix, numerals, suffix, tenderMark] = /^([A-Z]{2})(\d+)([A-Z]+)(1?)$/.exec(bare) ?? [];
  if (prefix === undefined || numerals === undefined || suffix === undefined) {
    const remark =
      bare === ''
        ? 'No registration number is given.'
        : 'The number is not two letters, up to four numerals and up to three letters.';
    const unread = { prefix: null, state: null, numerals: null, suffix: null, tender: false };
    return { asWritten, number: asWritten.trim(), ...unread, explanation: [], remarks: [remark] };
  }
  const tender = tenderMark === '1';
  const state = stateOfPrefix(prefix);
  const explanation = [
    state === null
      ? `${prefix} is the prefix of no state.`
      : `${prefix} is the prefix of ${STATE_NAMES[state]} (33 CFR part 173, appendix A).`,
    `${numerals} ${suffix} is the vessel's number there.`,
  ];
  if (tender) explanation.push('The 1 at the end marks a tender of that vessel (33 CFR 173.27(d)).');
  return {
    asWritten,
    number: [prefix, numerals, suffix, ...(tender ? ['1'] : [])].join(' '),
    prefix,
    state,
    numerals,
    suffix,
    tender,
    explanation,
    remarks: [...remarkOnPrefix(prefix, state), ...remarkOnGroups(numerals, suffix)],
  };
}

/** A prefix that looks like another state's postal code, or a postal code that is nobody's prefix. */
function remarkOnPrefix(prefix: string, state: string | null): string[] {
  if (state === prefix) return [];
  if (!isStateCode(prefix)) return state === null ? [`No state has the prefix ${prefix}.`] : [];
  const namesake = STATE_NAMES[prefix];
  const carried = prefixOfState(prefix);
  return state === null
    ? [`${prefix} is the postal code of ${namesake}, whose vessels carry ${carried}.`]
    : [`${prefix} on a hull is ${STATE_NAMES[state]}; ${namesake} is ${carried}.`];
}

function remarkOnGroups(numerals: string, suffix: string): string[] {
  const remarks: string[] = [];
  const fits = (numerals.length <= 4 && suffix.length <= 2) || (numerals.length <= 3 && suffix.length <= 3);
  if (!fits) {
    remarks.push(
      'A number has up to four numerals with two letters, or three numerals with three letters (33 CFR 174.23(a)).',
    );
  }
  const misread = [...new Set(suffix.match(/[IOQ]/g))].join(', ');
  if (misread !== '') {
    remarks.push(`The letters at the end may not hold ${misread} (33 CFR 174.23(b)): perhaps misread.`);
  }
  return remarks;
}
