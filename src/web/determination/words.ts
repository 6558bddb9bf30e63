import type { Duty, Outcome } from '../../../shared/determination/determination.js';
import type { Truth } from '../../../shared/kernel/truth.js';
import { STATE_NAMES } from '../../../shared/place/state-codes.js';
import type { Fill } from '../look/sign.js';

export const OUTCOMES: Readonly<Record<Outcome, { word: string; fill: Fill }>> = {
  required: { word: 'Required', fill: 'full' },
  undetermined: { word: 'Cannot tell yet', fill: 'half' },
  'not-required': { word: 'Not required', fill: 'empty' },
};

export const TRUTHS: Readonly<Record<Truth, { word: string; fill: Fill }>> = {
  true: { word: 'Yes', fill: 'full' },
  unknown: { word: 'Not known yet', fill: 'half' },
  false: { word: 'No', fill: 'empty' },
};

export const BASES: Readonly<Record<Duty['packBasis'], string>> = {
  'read-primary': 'Read in the law itself.',
  'read-agency': 'Read on the agency’s own pages, not in the law.',
  'read-secondary': 'Read in a secondary source, not in the law.',
  memory: 'From memory: nobody has read the law for this yet.',
  'not-read': 'Not read: ask the agency.',
};

/** `us-tx` is `Texas`, `us` is `federal rule`. */
export function nameOfJurisdiction(jurisdiction: string): string {
  if (jurisdiction === 'us') return 'federal rule';
  if (jurisdiction === 'state') return 'state not known';
  return STATE_NAMES[jurisdiction.slice(-2).toUpperCase()] ?? jurisdiction;
}

/** `death-or-disappearance-notice` is `Death or disappearance notice`. */
export function nameOfKind(kind: string): string {
  const words = kind.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
}
