import type { OverdueEnd } from '../call/call.js';
import type { Stamp } from '../call/stamp.js';

/** The rungs of the ladder, in the order in which they are climbed. */
export type Rung = 'call-renter' | 'search' | 'sheriff' | 'coast-guard';
export const RUNGS: readonly Rung[] = ['call-renter', 'search', 'sheriff', 'coast-guard'];

/** A craft that is not back ends by itself in one of these; `became-incident` is written when one is opened. */
export type NotBackEnd = Exclude<OverdueEnd, 'became-incident'>;
export const NOT_BACK_ENDS: readonly NotBackEnd[] = [
  'late',
  'broken-down',
  'aground',
  'stolen',
  'found-empty',
];

/** What searchers are told beside what the fleet and the outing say. */
export interface SearchSheet {
  /** RFC 3339. */
  readonly lastSeenAt?: string;
  readonly lastSeenWhere?: string;
  readonly lastSpokenAt?: string;
  readonly fuel?: string;
  readonly plan?: string;
  readonly remark?: string;
}

/** A rung that was climbed. */
export interface RungStamp {
  readonly id: string;
  readonly rung: Rung;
  readonly stamp: Stamp;
  readonly words: string | null;
  readonly person: string;
}

const WHY: Readonly<Partial<Record<NotBackEnd, string>>> = {
  aground:
    'Grounding is a casualty type of the federal report, and what craft and people came to is not known until somebody asked.',
  stolen:
    'Who had the craft and what was done with it is not known; police and insurer will ask for a record.',
  'found-empty':
    'A craft without its people means that somebody may be in the water: a disappearance from a vessel is reportable (33 CFR 173.55).',
};

/**
 * Why an ending should become an incident; null where it need not. It proposes and decides nothing: that there is no
 * incident is a person's word with name and reason.
 * @example proposeIncident('late') // null
 */
export function proposeIncident(ended: OverdueEnd | null): string | null {
  if (ended === null || ended === 'became-incident') return null;
  return WHY[ended] ?? null;
}
