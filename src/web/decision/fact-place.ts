import type { IncidentFacts } from '../../../shared/record/incident-facts.js';
import type { SectionName } from '../../../shared/record/incident-record.js';

/** How a fact is answered. */
export type FactKind =
  | 'ternary'
  | 'outcome'
  | 'care'
  | 'use'
  | 'assessment'
  | 'hours'
  | 'instant'
  | 'amount'
  | 'state'
  | 'casualty'
  | 'craft'
  | 'text';

/** Where a fact of the determination stands in the record: a member of a section, or of one item of a list of it. */
export interface FactPlace {
  readonly kind: FactKind;
  readonly section: SectionName;
  readonly item?: { readonly list: string; readonly id: string };
  readonly member: string;
  /** Kept without how it is known. */
  readonly plain?: true;
}

type Rule = readonly [kind: FactKind, section: SectionName, member?: string];

/** Facts of the whole occurrence, by their name in the facts. */
const OF_ALL: Readonly<Record<string, Rule>> = {
  everyoneAccountedFor: ['ternary', 'people'],
  operatorAbleToReport: ['ternary', 'people'],
  peopleAssessment: ['assessment', 'people', 'assessment'],
  damageAssessment: ['assessment', 'damage', 'assessment'],
  federalWaters: ['ternary', 'time-and-place'],
  place: ['state', 'time-and-place', 'states'],
  involvesVesselOrEquipment: ['ternary', 'account'],
  oilSheen: ['ternary', 'account'],
  casualtyTypes: ['casualty', 'account'],
  officerAtScene: ['ternary', 'authorities'],
  officerFiledReport: ['ternary', 'authorities'],
  emergencyServicesCalled: ['ternary', 'emergency-response'],
};

const OF_PERSON: Readonly<Record<string, FactKind>> = {
  outcome: 'outcome',
  care: 'care',
  inpatient: 'ternary',
  lostConsciousness: 'ternary',
  carriedFromScene: 'ternary',
  incapacitatedHours: 'hours',
  amputation: 'ternary',
  eyeLoss: 'ternary',
  employee: 'ternary',
  signsOfHarm: 'ternary',
  diedAt: 'instant',
  admittedAt: 'instant',
  missingSince: 'instant',
};

const OF_CRAFT: Readonly<Record<string, FactKind>> = {
  use: 'use',
  numbered: 'ternary',
  motorized: 'ternary',
  inspected: 'ternary',
  documented: 'ternary',
  completeLoss: 'ternary',
  passengersForHire: 'ternary',
  stateOfNumber: 'state',
};

/**
 * Where a fact that a question names is written; null where it is more than one value, and the section is to be opened.
 * @param pointer RFC 6901, into the facts
 * @example placeOf('/people/0/care', facts)
 * // { kind: 'care', section: 'people', item: { list: 'people', id: 'p1' }, member: 'care' }
 */
export function placeOf(pointer: string, facts: IncidentFacts): FactPlace | null {
  const [name = '', index, member = ''] = pointer.split('/').slice(1);
  if (index === undefined) {
    const [kind, section, renamed = name] = OF_ALL[name] ?? [];
    return kind === undefined || section === undefined ? null : { kind, section, member: renamed };
  }
  if (name === 'people')
    return ofItem(OF_PERSON, 'people', 'people', facts.people[Number(index)]?.id, member);
  if (name === 'vessels') return ofItem(OF_CRAFT, 'craft', 'craft', facts.vessels[Number(index)]?.id, member);
  if (name === 'damage') return ofDamage(facts.damage[Number(index)]?.id, member);
  return null;
}

function ofItem(
  kinds: Readonly<Record<string, FactKind>>,
  section: SectionName,
  list: string,
  id: string | undefined,
  member: string,
): FactPlace | null {
  const kind = kinds[member];
  return kind === undefined || id === undefined ? null : { kind, section, item: { list, id }, member };
}

function ofDamage(id: string | undefined, member: string): FactPlace | null {
  if (id === undefined) return null;
  const line = { section: 'damage', item: { list: 'lines', id } } as const;
  if (member === 'amount') return { ...line, kind: 'amount', member };
  if (member === 'owner') return { ...line, kind: 'text', member, plain: true };
  return member === 'vessel' ? { ...line, kind: 'craft', member: 'craft', plain: true } : null;
}

const SECTIONS: Readonly<Record<string, SectionName>> = {
  people: 'people',
  vessels: 'craft',
  damage: 'damage',
  place: 'time-and-place',
  occurredAt: 'time-and-place',
};

/** The section that a fact belongs to, also where it is more than one value. */
export function sectionOf(pointer: string, facts: IncidentFacts): SectionName {
  const place = placeOf(pointer, facts);
  return place?.section ?? SECTIONS[pointer.split('/')[1] ?? ''] ?? 'account';
}

/** Every fact that can be tried or answered by itself, as pointers, in the order in which they are offered. */
export function listFacts(facts: IncidentFacts): string[] {
  const of = (list: string, items: readonly unknown[], members: readonly string[]): string[] =>
    items.flatMap((_item, index) => members.map((member) => `/${list}/${index}/${member}`));
  return [
    ...of('people', facts.people, Object.keys(OF_PERSON)),
    ...of('damage', facts.damage, ['amount', 'owner', 'vessel']),
    ...of('vessels', facts.vessels, Object.keys(OF_CRAFT)),
    ...Object.keys(OF_ALL).map((name) => `/${name}`),
  ];
}
