import type { FieldError } from '../kernel/field-error.js';
import type { IncidentFacts } from '../record/incident-facts.js';
import { AmountRangeDto, DamageItemDto } from './damage-item.dto.js';
import { findObjectFaults } from './find-object-faults.js';
import { findRelationFaults } from './find-relation-faults.js';
import { IncidentFactsDto } from './incident-facts.dto.js';
import { isObject } from './is-object.js';
import { PersonDto } from './person.dto.js';
import { PlaceDto } from './place.dto.js';
import { ScopeAnswerDto } from './scope-answer.dto.js';
import { sortFaults } from './sort-faults.js';
import { CharterSignsDto, RentalFactsDto, VesselDto } from './vessel.dto.js';

export type FactsReading =
  | { readonly ok: true; readonly facts: IncidentFacts }
  | { readonly ok: false; readonly errors: FieldError[] };

/**
 * Reads the facts of an occurrence from parsed JSON. Every fault is named at its own pointer, all of them
 * together, in the order of the pointers; a pointer has one fault at most. The facts are the input itself,
 * not a copy.
 * @example readIncidentFacts({ ...facts, weather: 'fine' })
 * // { ok: false, errors: [{ pointer: '/weather', detail: 'No such member: take it out.' }] }
 */
export function readIncidentFacts(input: unknown): FactsReading {
  const faults = [...findMemberFaults(input), ...findRelationFaults(input)];
  if (faults.length > 0) return { ok: false, errors: sortFaults(faults) };
  return { ok: true, facts: input as IncidentFacts };
}

function findMemberFaults(input: unknown): FieldError[] {
  const faults = findObjectFaults(IncidentFactsDto, input, []);
  if (!isObject(input)) return faults;
  const { place, vessels, damage } = input;
  return [
    ...faults,
    ...(isObject(place) ? findObjectFaults(PlaceDto, place, ['place']) : []),
    ...LISTS.flatMap(([list, type]) =>
      listOf(input[list]).flatMap((item, index) => findObjectFaults(type, item, [list, index])),
    ),
    ...listOf(vessels).flatMap((vessel, index) =>
      isObject(vessel)
        ? WITHIN_VESSELS.flatMap(([member, type]) =>
            isObject(vessel[member])
              ? findObjectFaults(type, vessel[member], ['vessels', index, member])
              : [],
          )
        : [],
    ),
    ...listOf(damage).flatMap((item, index) =>
      isObject(item) && isObject(item['amount'])
        ? findObjectFaults(AmountRangeDto, item['amount'], ['damage', index, 'amount'])
        : [],
    ),
  ];
}

function listOf(value: unknown): readonly unknown[] {
  return Array.isArray(value) ? value : [];
}

const WITHIN_VESSELS = [
  ['charter', CharterSignsDto],
  ['rental', RentalFactsDto],
] as const;

const LISTS = [
  ['vessels', VesselDto],
  ['people', PersonDto],
  ['damage', DamageItemDto],
  ['scopeAnswers', ScopeAnswerDto],
] as const;
