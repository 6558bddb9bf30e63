import { valueOf } from '../../../shared/call/known.js';
import type { Craft } from '../../../shared/record/craft-section.js';
import type { RecordSections } from '../../../shared/record/incident-record.js';
import type { PersonRecord } from '../../../shared/record/people-section.js';
import { findVesselType } from '../../../shared/vocabulary/vessel-types.js';
import type { FleetCraft } from './read-record.js';

/** One of our craft as it is named to somebody outside; null stands for what nobody has written down. */
export interface OurCraft {
  /** Id in the record; null while only the call names it. */
  readonly id: string | null;
  readonly fleetCraft: string | null;
  readonly name: string;
  /** A slug of the vocabulary of vessel types, where it is known. */
  readonly type: string | null;
  readonly kind: string | null;
  readonly look: string | null;
  readonly hullNumber: string | null;
  readonly registrationNumber: string | null;
  readonly owner: string | null;
  readonly insurer: string | null;
}

type Sections = Partial<RecordSections>;

/**
 * Our craft of an incident: those of the section on craft, and before anybody has written that, those that the call
 * names. What the record leaves open about one comes from the list of the fleet.
 */
export function ourCraftOf({ craft: section, call }: Sections, fleet: readonly FleetCraft[]): OurCraft[] {
  const listed = (section?.craft ?? []).filter(({ ours }) => ours !== false);
  if (listed.length > 0) {
    return listed.map((one) => ourCraft(one, one.id, findInFleet(one, fleet)));
  }
  return (call?.craftNamed ?? []).map((name) => ourCraft({ name }, null, findInFleet({ name }, fleet)));
}

const findInFleet = (
  { fleetCraft, name }: Pick<Craft, 'fleetCraft' | 'name'>,
  fleet: readonly FleetCraft[],
): FleetCraft | undefined =>
  fleet.find(({ id }) => id === fleetCraft) ??
  fleet.find(({ unitName }) => unitName.toLowerCase() === name?.toLowerCase());

function ourCraft(one: Partial<Craft>, id: string | null, fleet: FleetCraft | undefined): OurCraft {
  const type = valueOf(one.type) ?? fleet?.type ?? null;
  const registered = valueOf(one.registrationNumber) ?? fleet?.registrationNumber;
  const state = valueOf(one.stateOfNumber);
  return {
    id,
    fleetCraft: fleet?.id ?? null,
    name: one.name ?? fleet?.unitName ?? one.id ?? '',
    type,
    kind: type === null ? null : (findVesselType(type)?.label ?? type),
    look: lineOf(
      valueOf(one.makeAndModel) ?? lineOf(fleet?.modelYear, fleet?.make, fleet?.model),
      one.colours ?? fleet?.colours?.join(' and '),
    ),
    hullNumber: valueOf(one.hullNumber) ?? fleet?.hullNumber ?? null,
    registrationNumber: registered === undefined ? null : withState(registered, state),
    owner: lineOf(one.ownerName, one.ownerContact),
    insurer: one.insurer ?? null,
  };
}

/** Numbers begin with their state (33 CFR 174.23, from memory), so that it is said of others alone. */
function withState(number: string, state: string | undefined): string {
  return state === undefined || number.startsWith(state) ? number : `${number} (${state})`;
}

/** A craft as an addition to the record names it: by its id, or whole where the call alone names it. */
export function asInRecord({ id, name, fleetCraft }: OurCraft): Craft {
  if (id !== null) return { id };
  return { id: idOf(name), ours: true, name, ...(fleetCraft !== null && { fleetCraft }) };
}

/** The same on every phone, so that two of them add one craft: `idOf('PWC 7')` is `'PWC-7'`. */
function idOf(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replaceAll(/[^A-Za-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '');
  return plain.slice(0, 64) || 'craft';
}

/** Who drove it: the people of the record who did, or those of the rental of whom it is known. */
export function operatorsOf(craft: OurCraft, { people, rental }: Sections): PersonRecord[] {
  const aboard = peopleOn(craft, people?.people ?? []);
  const drove = aboard.filter(({ role }) => valueOf(role) === 'operator');
  if (drove.length > 0) return drove;
  return (rental?.operators ?? []).flatMap((one): PersonRecord[] => {
    if (valueOf(one.drove) !== 'yes' || (one.craft !== undefined && one.craft !== craft.id)) return [];
    return [people?.people?.find(({ id }) => id === one.person) ?? { id: one.id, ...nameOf(one.name) }];
  });
}

/** Those aboard it who did not drive. */
export function ridersOf(craft: OurCraft, { people }: Sections): PersonRecord[] {
  return peopleOn(craft, people?.people ?? []).filter(({ role }) =>
    ['passenger', 'towed', 'in-water'].includes(valueOf(role) ?? ''),
  );
}

const peopleOn = (craft: OurCraft, people: readonly PersonRecord[]): PersonRecord[] =>
  people.filter((person) => person.craft !== undefined && person.craft === craft.id);

const nameOf = (name: string | undefined): { name?: string } => (name === undefined ? {} : { name });

/** What is known of some words, in one line; null where nothing is. */
export function lineOf(...words: readonly (string | number | null | undefined)[]): string | null {
  return words.filter((word) => word !== undefined && word !== null && word !== '').join(', ') || null;
}
