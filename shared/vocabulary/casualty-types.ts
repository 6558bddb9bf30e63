import type { Term, TermBasis } from './term.js';

/**
 * Kinds of occurrence, in the labels that the federal accident data used before 2024 (the list called
 * "2013" after the year of the labels on state forms that match it), with sinking and starting engine from a
 * state guide. The Coast Guard renamed the types for occurrences from 1 January 2024 (Policy Letter 23-01
 * CH-1, section 4); those labels have not been read, so there is no second list yet.
 */
export interface CasualtyType extends Term {
  readonly vocabularyVersion: '2013';
}

const DATA_LABELS =
  'Labels of the released federal accident data before 2024, as public code that cleans them lists them';
const STATE_GLOSSARY = 'California boating safety report 2004, glossary';
const STATE_GUIDE = 'Connecticut guidelines for investigators of boating accidents';

const both = (basis: TermBasis): readonly [TermBasis, TermBasis] => [basis, basis];
const recalledMeaning = (label: TermBasis): readonly [TermBasis, TermBasis] => [label, 'memory'];

function type(
  slug: string,
  label: string,
  definition: string,
  source: string,
  [basis, definitionBasis]: readonly [TermBasis, TermBasis],
): CasualtyType {
  return { slug, label, definition, source, basis, definitionBasis, vocabularyVersion: '2013' };
}

/** Every casualty type, in the order in which they are offered. */
export const casualtyTypes: readonly CasualtyType[] = [
  type(
    'capsizing',
    'Capsizing',
    'The vessel rolls until its bottom is up; a sailing craft may count once it lies on its side.',
    STATE_GLOSSARY,
    both('read'),
  ),
  type(
    'carbon-monoxide-exposure',
    'Carbon monoxide exposure',
    'Someone is harmed by carbon monoxide that a vessel or its gear gives off.',
    STATE_GUIDE,
    recalledMeaning('read'),
  ),
  type(
    'collision-with-recreational-vessel',
    'Collision with a recreational vessel',
    'The vessel and another one in recreational use, rentals included, strike each other.',
    DATA_LABELS,
    recalledMeaning('read-secondary'),
  ),
  type(
    'collision-with-commercial-vessel',
    'Collision with a commercial vessel',
    'The vessel and one that works for pay, such as a tow, ferry or charter, strike each other.',
    DATA_LABELS,
    recalledMeaning('read-secondary'),
  ),
  type(
    'collision-with-government-vessel',
    'Collision with a government vessel',
    'The vessel and one in public service, such as a patrol or rescue boat, strike each other.',
    DATA_LABELS,
    recalledMeaning('read-secondary'),
  ),
  type(
    'collision-with-fixed-object',
    'Collision with a fixed object',
    'The vessel hits a thing that stays put, above or under the water: a dock, piling, bridge or buoy on its anchor.',
    STATE_GLOSSARY,
    both('read'),
  ),
  type(
    'collision-with-floating-object',
    'Collision with a floating object',
    'The vessel hits a thing that the water carries, at or under the surface, other than a vessel.',
    STATE_GLOSSARY,
    both('read'),
  ),
  type(
    'collision-with-submerged-object',
    'Collision with a submerged object',
    'The vessel hits a thing that lies below the surface, such as a stump or sunken timber.',
    `${STATE_GUIDE}, p. 9`,
    both('read'),
  ),
  type(
    'electrocution',
    'Electrocution',
    'Stray current connected with a vessel shocks or kills someone.',
    STATE_GUIDE,
    both('read'),
  ),
  type(
    'fall-in-vessel',
    'Fall in the vessel',
    'Someone falls and stays aboard.',
    STATE_GUIDE,
    recalledMeaning('read'),
  ),
  type(
    'fall-overboard',
    'Fall overboard',
    'Someone goes into the water by accident, with no outside force throwing them.',
    STATE_GUIDE,
    recalledMeaning('read'),
  ),
  type(
    'fire-or-explosion-fuel',
    'Fire or explosion, fuel',
    'Fuel, its vapour or another liquid aboard burns or explodes when it should not.',
    STATE_GLOSSARY,
    both('read'),
  ),
  type(
    'fire-or-explosion-other',
    'Fire or explosion, not fuel',
    'Something other than fuel burns or explodes, such as wiring or a battery.',
    DATA_LABELS,
    recalledMeaning('read-secondary'),
  ),
  type(
    'fire-or-explosion-unknown-origin',
    'Fire or explosion of unknown origin',
    'There was a fire or an explosion and nobody can yet say what fed it.',
    DATA_LABELS,
    recalledMeaning('read-secondary'),
  ),
  type(
    'flooding-or-swamping',
    'Flooding or swamping',
    'Water fills the vessel, from below or over the side, and it stays afloat.',
    STATE_GLOSSARY,
    both('read'),
  ),
  type(
    'grounding',
    'Grounding',
    'The vessel runs onto the bottom, or strikes or pounds on rock, reef or shoal.',
    STATE_GLOSSARY,
    both('read'),
  ),
  type(
    'person-departed-vessel',
    'Person left the vessel',
    'Someone leaves the vessel on purpose, to swim or to fetch something, and comes to harm.',
    DATA_LABELS,
    recalledMeaning('read-secondary'),
  ),
  type(
    'person-ejected',
    'Person ejected',
    'A wake, wave, collision or sudden turn throws someone out.',
    `${STATE_GUIDE}, p. 9`,
    both('read'),
  ),
  type(
    'person-struck-by-propeller',
    'Person struck by a propeller',
    'A propeller or other propulsion unit hits someone, aboard or in the water.',
    `${STATE_GUIDE}, p. 9`,
    both('read'),
  ),
  type(
    'person-struck-by-vessel',
    'Person struck by a vessel',
    'A vessel hits someone, aboard or in the water.',
    `${STATE_GUIDE}, p. 9`,
    both('read'),
  ),
  type(
    'sinking',
    'Sinking',
    'After flooding, swamping or capsizing the vessel no longer floats and settles under the surface.',
    `${STATE_GUIDE}, p. 9`,
    both('read'),
  ),
  type(
    'starting-engine',
    'Starting the engine',
    'It happened while the engine was being started.',
    `${STATE_GUIDE}, p. 9`,
    both('read'),
  ),
  type(
    'sudden-medical-condition',
    'Sudden medical condition',
    'Illness that came on at that moment began the chain of events.',
    DATA_LABELS,
    recalledMeaning('read-secondary'),
  ),
  type(
    'towed-person-mishap',
    'Skier or towed-person mishap',
    'Someone on skis, a tube or another towed device falls, hits something fixed or submerged, or is caught or hit by the line.',
    `${STATE_GUIDE}, p. 9`,
    both('read'),
  ),
  type(
    'other',
    'Other',
    'None of the types fits; say in words what happened.',
    `${STATE_GUIDE}, p. 9`,
    both('read'),
  ),
  type('unknown', 'Unknown', 'Too little is known to choose.', `${STATE_GUIDE}, p. 9`, both('read')),
];

/** Slugs of all casualty types. */
export const casualtyTypeSlugs: readonly string[] = casualtyTypes.map((term) => term.slug);

const bySlug = new Map(casualtyTypes.map((term) => [term.slug, term]));

/** `findCasualtyType('grounding')?.label` is `'Grounding'`; a slug of no list gives `undefined`. */
export function findCasualtyType(slug: string): CasualtyType | undefined {
  return bySlug.get(slug);
}
