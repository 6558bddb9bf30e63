import type { Term, TermBasis } from './term.js';

/** A type of vessel, with what callers say instead of it. */
export interface VesselType extends Term {
  /** Single words and short phrases in lower case, as they are heard on the phone. */
  readonly saidAs: readonly string[];
}

const RULE = '33 CFR 174.19(a)';
const DEFINITIONS = '33 CFR 173.3';
const STATE_GUIDE = 'Connecticut guidelines for investigators of boating accidents, p. 3';

function type(
  slug: string,
  label: string,
  definition: string,
  definitionSource: string | null,
  definitionBasis: TermBasis,
  saidAs: readonly string[] = [],
): VesselType {
  const source = `${RULE}(11)${definitionSource === null ? '' : `; meaning: ${definitionSource}`}`;
  return { slug, label, definition, source, basis: 'read', definitionBasis, saidAs };
}

/** The authorized terms for the type of a vessel, in the order of the rule. */
export const vesselTypes: readonly VesselType[] = [
  type(
    'airboat',
    'Airboat',
    'Flat-bottomed as a rule, and pushed by a propeller in the air.',
    DEFINITIONS,
    'read',
    ['fan boat'],
  ),
  type('auxiliary-sail', 'Auxiliary sail', 'Sails first; an engine helps.', DEFINITIONS, 'read', [
    'sailboat',
  ]),
  type(
    'cabin-motorboat',
    'Cabin motorboat',
    'Driven by an engine, with closed rooms inside the hull or on it.',
    DEFINITIONS,
    'read',
    ['cruiser', 'cabin cruiser'],
  ),
  type(
    'houseboat',
    'Houseboat',
    'Has an engine but seldom planes; built to stay on, low at the waterline, with little or no foredeck or cockpit.',
    DEFINITIONS,
    'read',
  ),
  type(
    'inflatable-boat',
    'Inflatable boat',
    'Tubes or chambers filled with air give it its shape and keep it afloat.',
    null,
    'memory',
    ['inflatable', 'raft', 'dinghy'],
  ),
  type(
    'open-motorboat',
    'Open motorboat',
    'Built open and for a motor; a canopy or a shelter over a part of it does not change that.',
    STATE_GUIDE,
    'read',
    [
      'motorboat',
      'speedboat',
      'ski boat',
      'jet boat',
      'runabout',
      'deck boat',
      'bowrider',
      'fishing boat',
      'bass boat',
    ],
  ),
  type(
    'paddlecraft',
    'Paddlecraft',
    'Moved by people alone, with paddles, oars or poles: canoe, kayak, paddle board.',
    null,
    'memory',
    ['kayak', 'canoe', 'paddle board', 'paddleboard', 'sup'],
  ),
  type(
    'personal-watercraft',
    'Personal watercraft',
    'Driven by a jet pump or the like; riders sit, stand or kneel on it, not in it.',
    'a legal reference page',
    'read-secondary',
    ['pwc', 'watercraft', 'water scooter', 'ski'],
  ),
  type(
    'pontoon-boat',
    'Pontoon boat',
    'A deck carried by two or more closed tubes or floats.',
    null,
    'memory',
    ['pontoon', 'toon', 'tritoon', 'party barge', 'barge'],
  ),
  type('rowboat', 'Rowboat', 'A light boat that people row.', STATE_GUIDE, 'read', ['row boat']),
  type('sail-only', 'Sail only', 'The wind alone moves it.', STATE_GUIDE, 'read', ['sailboat', 'dinghy']),
  type('other', 'Other', 'None of the terms fits; say in words what it is.', null, 'read'),
];

/** A term that the rule lists and leaves unexplained. */
export type ListedTerm = Pick<Term, 'slug' | 'label' | 'source' | 'basis'>;

function terms(paragraph: number, labels: readonly string[]): readonly ListedTerm[] {
  return labels.map((label) => ({
    slug: label.toLowerCase().replaceAll(/[^a-z]+/g, '-'),
    label,
    source: `${RULE}(${paragraph})`,
    basis: 'read',
  }));
}

/** What the hull is made of. */
export const hullMaterials: readonly ListedTerm[] = terms(12, [
  'Aluminum',
  'Fiberglass',
  'Plastic',
  'Rubber/vinyl/canvas',
  'Steel',
  'Wood',
  'Other',
]);

/** What moves it. */
export const propulsions: readonly ListedTerm[] = terms(13, [
  'Air thrust',
  'Manual',
  'Propeller',
  'Sail',
  'Water jet',
  'Other',
]);

/** Where the engine sits and how it drives. */
export const engineDrives: readonly ListedTerm[] = terms(14, [
  'Inboard',
  'Outboard',
  'Pod drive',
  'Sterndrive',
  'Other',
]);

export const fuels: readonly ListedTerm[] = terms(15, ['Electric', 'Diesel', 'Gas', 'Other']);

/** `slugsOf(fuels)` is `['electric', 'diesel', 'gas', 'other']`. */
export function slugsOf(list: readonly ListedTerm[]): readonly string[] {
  return list.map(({ slug }) => slug);
}

const bySlug = new Map(vesselTypes.map((term) => [term.slug, term]));

/** `findVesselType('pontoon-boat')?.label` is `'Pontoon boat'`; a slug of no list gives `undefined`. */
export function findVesselType(slug: string): VesselType | undefined {
  return bySlug.get(slug);
}
