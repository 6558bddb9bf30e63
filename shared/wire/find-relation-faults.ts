import type { FieldError } from '../kernel/field-error.js';
import { jsonPointer } from '../kernel/json-pointer.js';
import type { PersonOutcome } from '../record/incident-facts.js';
import { readInstant } from '../time/read-instant.js';
import { isDateTime } from './check-date-time.js';
import { isObject } from './is-object.js';

type Json = Readonly<Record<string, unknown>>;

/**
 * Faults between members that are each well formed: ids given twice, references to no vessel, a range or a
 * span that runs backwards, one coordinate alone, a death without a death. Whatever is not well formed is
 * passed over here, since the classes name it already.
 * @example findRelationFaults({ place: { latitude: 33.8 } })[0]?.pointer // '/place/longitude'
 */
export function findRelationFaults(input: unknown): FieldError[] {
  if (!isObject(input)) return [];
  const { occurredAt, occurredUntil, place, vessels, people, damage } = input;
  const vesselIds = new Set(objectsIn(vessels).map(([, vessel]) => vessel['id']));
  return [
    ...(isBefore(occurredUntil, occurredAt)
      ? [fault(['occurredUntil'], 'Must not be before occurredAt: it is the end of the span.')]
      : []),
    ...(isObject(place) ? placeFaults(place) : []),
    ...['vessels', 'people', 'damage'].flatMap((list) => repeatedIds(list, input[list])),
    ...vesselReferences('people', people, vesselIds),
    ...vesselReferences('damage', damage, vesselIds),
    ...objectsIn(people).flatMap(([index, person]) => deathFaults(index, person, occurredAt)),
    ...objectsIn(damage).flatMap(([index, item]) => rangeFaults(index, item)),
  ];
}

function placeFaults({ latitude, longitude, states }: Json): FieldError[] {
  const lonely: FieldError[] = [];
  if (latitude !== undefined && longitude === undefined) {
    lonely.push(fault(['place', 'longitude'], 'Missing: latitude is given, so give longitude too.'));
  }
  if (longitude !== undefined && latitude === undefined) {
    lonely.push(fault(['place', 'latitude'], 'Missing: longitude is given, so give latitude too.'));
  }
  const repeated = repeats(Array.isArray(states) ? states : []);
  return [
    ...lonely,
    ...repeated.map((index) => fault(['place', 'states', index], 'Must not be named twice: take it out.')),
  ];
}

function repeatedIds(list: string, items: unknown): FieldError[] {
  const objects = objectsIn(items);
  return repeats(objects.map(([, item]) => item['id'])).map((position) =>
    fault([list, objects[position]?.[0] ?? position, 'id'], `Must differ from every earlier id in ${list}.`),
  );
}

function vesselReferences(list: string, items: unknown, vesselIds: ReadonlySet<unknown>): FieldError[] {
  return objectsIn(items)
    .filter(([, { vessel }]) => typeof vessel === 'string' && !vesselIds.has(vessel))
    .map(([index]) => fault([list, index, 'vessel'], 'Must be the id of a vessel in vessels.'));
}

function deathFaults(index: number, { outcome, diedAt }: Json, occurredAt: unknown): FieldError[] {
  if (diedAt === undefined) return [];
  if (NOT_DIED.has(outcome)) {
    return [fault(['people', index, 'diedAt'], 'Only for who died: set outcome to died, or take it out.')];
  }
  return isBefore(diedAt, occurredAt)
    ? [fault(['people', index, 'diedAt'], 'Must not be before occurredAt: check both.')]
    : [];
}

/** An outcome that is no word of the list is named by its class and says nothing about the death. */
const NOT_DIED: ReadonlySet<unknown> = new Set<PersonOutcome>([
  'unhurt',
  'injured',
  'missing',
  'not-back',
  'unknown',
]);

function rangeFaults(index: number, { amount }: Json): FieldError[] {
  if (!isObject(amount)) return [];
  const { low, high } = amount;
  return typeof low === 'number' && typeof high === 'number' && high < low
    ? [fault(['damage', index, 'amount', 'high'], 'Must not be below low.')]
    : [];
}

function fault(at: readonly (string | number)[], detail: string): FieldError {
  return { pointer: jsonPointer(at), detail };
}

function objectsIn(list: unknown): [number, Json][] {
  if (!Array.isArray(list)) return [];
  return list.flatMap((item: unknown, index): [number, Json][] => (isObject(item) ? [[index, item]] : []));
}

/** Positions of texts that stand earlier in the list already. */
function repeats(values: readonly unknown[]): number[] {
  const seen = new Set<string>();
  return values.flatMap((value, index) => {
    if (typeof value !== 'string') return [];
    if (seen.has(value)) return [index];
    seen.add(value);
    return [];
  });
}

function isBefore(one: unknown, other: unknown): boolean {
  if (typeof one !== 'string' || typeof other !== 'string' || !isDateTime(one) || !isDateTime(other))
    return false;
  return readInstant(one) < readInstant(other);
}
