import type { TermBasis } from './term.js';

/** A label of a state's form, with the federal words that it may mean: none, one, or several between which a person says. */
export interface StateLabel {
  readonly label: string;
  readonly federal: readonly string[];
  /** Why there is none, or how to choose. */
  readonly note?: string;
}

export interface StateLabels {
  /** USPS code. */
  readonly state: string;
  readonly source: string;
  readonly basis: TermBasis;
  readonly list: 'casualty-types' | 'contributing-factors';
  readonly labels: readonly StateLabel[];
}

const label = (name: string, ...federal: string[]): StateLabel => ({ label: name, federal });
const noted = (name: string, note: string, ...federal: string[]): StateLabel => ({
  label: name,
  federal,
  note,
});

const VESSELS = [
  'collision-with-recreational-vessel',
  'collision-with-commercial-vessel',
  'collision-with-government-vessel',
] as const;
const WHICH_VESSEL = 'The federal words tell vessels in recreational, commercial and public use apart.';

/**
 * Labels that were read on the forms of states. The labels are read; which federal word each means is our own reading,
 * and a person confirms it.
 */
export const stateLabels: readonly StateLabels[] = [
  {
    state: 'AL',
    source: 'Alabama MAI-9 (11/18)',
    basis: 'read',
    list: 'casualty-types',
    labels: [
      label('Capsizing', 'capsizing'),
      label('Collision with fixed object', 'collision-with-fixed-object'),
      label('Collision with floating object', 'collision-with-floating-object'),
      noted('Collision with vessel', WHICH_VESSEL, ...VESSELS),
      label('Struck underwater object', 'collision-with-submerged-object'),
      label('Falls in boat', 'fall-in-vessel'),
      label('Falls overboard', 'fall-overboard'),
      noted('Fallen skier', 'The federal word covers both labels for skiers.', 'towed-person-mishap'),
      noted('Skier hit object', 'The federal word covers both labels for skiers.', 'towed-person-mishap'),
      label('Fire/explosion (fuel)', 'fire-or-explosion-fuel'),
      label('Fire/explosion (non-fuel)', 'fire-or-explosion-other'),
      label('Flooding (swamping)', 'flooding-or-swamping'),
      label('Grounding', 'grounding'),
      label('Sinking', 'sinking'),
      label('Struck by boat', 'person-struck-by-vessel'),
      label('Struck by propeller', 'person-struck-by-propeller'),
      noted('Vessel wake damage', 'No federal word means it: say other, and in words what happened.'),
      label('Other', 'other'),
    ],
  },
  {
    state: 'PA',
    source: 'Pennsylvania boating accident analysis 2013',
    basis: 'read',
    list: 'casualty-types',
    labels: [
      label('Capsizing', 'capsizing'),
      label('Swamping', 'flooding-or-swamping'),
      label('Skier mishap', 'towed-person-mishap'),
      label('Person leaves vessel', 'person-departed-vessel'),
      noted('Collision with vessel', WHICH_VESSEL, ...VESSELS),
      label('Struck by prop', 'person-struck-by-propeller'),
      label('Falls overboard', 'fall-overboard'),
      label('Grounding', 'grounding'),
      label('Fall in boat', 'fall-in-vessel'),
      noted(
        'Fire/explosion',
        'The federal words ask what burned.',
        'fire-or-explosion-fuel',
        'fire-or-explosion-other',
        'fire-or-explosion-unknown-origin',
      ),
      label('Struck submerged object', 'collision-with-submerged-object'),
      label('Collision with fixed object', 'collision-with-fixed-object'),
      label('Unknown', 'unknown'),
    ],
  },
  {
    state: 'AL',
    source: 'Alabama MAI-9 (11/18)',
    basis: 'read',
    list: 'contributing-factors',
    labels: [
      label('Alcohol use', 'alcohol-use'),
      label('Drug use', 'drug-use'),
      noted('Careless/reckless operation', 'No federal word means it: it blames, and the record does not.'),
      label('Congested waters', 'congested-waters'),
      label('Equipment failure', 'equipment-failure'),
      label('Excessive speed', 'excessive-speed'),
      label('Hazardous waters', 'hazardous-waters'),
      label('Hull failure', 'hull-failure'),
      label('Improper anchoring', 'improper-anchoring'),
      label('Improper loading', 'improper-loading'),
      label('Lack of proper lights', 'inadequate-onboard-navigation-lights'),
      label('Machine failure', 'machinery-failure'),
      label('Navigation-rule violation', 'navigation-rules-violation'),
      label('No proper lookout', 'improper-lookout'),
      label('Operator inattention', 'operator-inattention'),
      label('Operator inexperience', 'operator-inexperience'),
      label('Overloading', 'overloading'),
      label('Sharp turn', 'sharp-turn'),
      label('Standing/sitting on gunwale, bow or transom', 'people-on-gunwale-bow-or-transom'),
      label('Vision obstructed', 'restricted-vision'),
      label('Weather', 'weather'),
      label('Other', 'other'),
    ],
  },
];

/**
 * The federal words that a label of a state may mean, capitals apart; undefined where nobody has read that label.
 * @example federalWordsFor('AL', 'casualty-types', 'grounding')?.federal // ['grounding']
 */
export function federalWordsFor(
  state: string,
  list: StateLabels['list'],
  said: string,
): StateLabel | undefined {
  const wanted = said.trim().toLowerCase();
  return stateLabels
    .filter((one) => one.state === state && one.list === list)
    .flatMap(({ labels }) => labels)
    .find((one) => one.label.toLowerCase() === wanted);
}
