import type { Truth } from '../kernel/truth.js';
import { STATE_NAMES } from '../place/state-codes.js';
import type { Duty, Outcome } from './determination.js';

/** How each outcome is said everywhere, always beside its sign. */
export const OUTCOME_WORDS: Readonly<Record<Outcome, string>> = {
  required: 'Required',
  undetermined: 'Cannot tell yet',
  'not-required': 'Not required',
};

export const TRUTH_WORDS: Readonly<Record<Truth, string>> = {
  true: 'Yes',
  unknown: 'Not known yet',
  false: 'No',
};

/** One sign for three values, a square: full, half, empty. */
export const SQUARES: Readonly<Record<Outcome | Truth, string>> = {
  required: '■',
  true: '■',
  undetermined: '◧',
  unknown: '◧',
  'not-required': '□',
  false: '□',
};

export const BASIS_SENTENCES: Readonly<Record<Duty['packBasis'], string>> = {
  'read-primary': 'Read in the law itself.',
  'read-agency': 'Read on the agency’s own pages, not in the law.',
  'read-secondary': 'Read in a secondary source, not in the law.',
  memory: 'From memory: nobody has read the law for this yet.',
  'not-read': 'Not read: ask the agency.',
};

/** `nameJurisdiction('us-tx')` is `'Texas'`, of `'us'` `'federal rule'`. */
export function nameJurisdiction(jurisdiction: string): string {
  if (jurisdiction === 'us') return 'federal rule';
  if (jurisdiction === 'state') return 'state not known';
  return STATE_NAMES[jurisdiction.slice(-2).toUpperCase()] ?? jurisdiction;
}

/** `nameKind('death-or-disappearance-notice')` is `'Death or disappearance notice'`. */
export function nameKind(kind: string): string {
  const words = kind.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}

/** `nameDuty('us-tx/accident-report', 'PWC-7')` is `'Accident report, Texas (PWC-7)'`. */
export function nameDuty(duty: string, vessel: string | null): string {
  const [jurisdiction = '', kind = ''] = duty.split('/');
  const whose = vessel === null ? '' : ` (${vessel})`;
  return `${nameKind(kind)}, ${nameJurisdiction(jurisdiction)}${whose}`;
}

/** The deadline that counts for a duty as it stands: its own, or the one that it would have. */
export function clockOf(duty: Duty): string | null {
  return duty.dueAt ?? duty.dueAtIfRequired;
}

/** What a person does about a duty now, in a sentence or two. */
export function whatToDo({ outcome, authority, immediate, questions }: Duty): string {
  const addressee = authority ?? 'the state’s boating law administrator';
  if (outcome === 'not-required') {
    return 'Nothing to report on these facts. If the facts change, determine again.';
  }
  if (outcome === 'required') {
    return `Report to: ${addressee}.${immediate ? ' Do it now, without delay.' : ''}`;
  }
  const first = questions.some(({ fact }) => fact !== null) ? 'Answer what is asked below' : 'Ask the agency';
  return `${first}; until then be ready to report to: ${addressee}.${immediate ? ' If it is required, it is due now.' : ''}`;
}
