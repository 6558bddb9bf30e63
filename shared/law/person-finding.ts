import { jsonPointer } from '../kernel/json-pointer.js';
import { allOf, type Truth } from '../kernel/truth.js';
import type { OpenPoint } from './finding.js';
import type { PersonReading } from './read-person.js';

/** A test of one person, with what is still open: `proves` and `denies` speak of this person only. */
export interface PersonFinding {
  readonly value: Truth;
  readonly open: readonly OpenPoint[];
}

export const TRUE: PersonFinding = { value: 'true', open: [] };
export const FALSE: PersonFinding = { value: 'false', open: [] };

export function unknownFinding(open: readonly OpenPoint[]): PersonFinding {
  return { value: 'unknown', open };
}

/** A question about one fact of the person. */
export function personPoint(
  reading: PersonReading,
  member: string,
  text: string,
  proves: boolean,
  denies = false,
): OpenPoint {
  return { fact: jsonPointer(['people', reading.index, member]), text, proves, denies };
}

/** Both must hold of the person: an answer proves only where the other part holds already. */
export function both(one: PersonFinding, other: PersonFinding): PersonFinding {
  const value = allOf([one.value, other.value]);
  if (value !== 'unknown') return { value, open: [] };
  const openOf = (mine: PersonFinding, rest: PersonFinding): OpenPoint[] =>
    mine.open.map((point) => ({ ...point, proves: point.proves && rest.value === 'true' }));
  return unknownFinding([...openOf(one, other), ...openOf(other, one)]);
}
