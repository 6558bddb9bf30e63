import type { FieldError } from '../kernel/field-error.js';
import { jsonPointer } from '../kernel/json-pointer.js';
import { findObjectFaults } from './find-object-faults.js';
import { isObject } from './is-object.js';
import { KnownDto } from './record-compounds.js';
import { membersOf, type Member, type Shape, type ValueRule } from './record-members.js';

type Tokens = readonly (string | number)[];

/** More items than any occurrence has; it keeps a request from growing without end. */
const MOST_ITEMS = 500;

/**
 * Faults of a document of the record by the rules of its class and of the classes inside it, each at its pointer.
 * @example findRecordFaults(PeopleDto, { people: [{ id: 'p1', outcome: { value: 'hurt', known: 'saw' } }] }, [])
 * // [{ pointer: '/people/0/outcome/value', detail: 'Must be one of unhurt, injured, …' }]
 */
export function findRecordFaults(shape: Shape, input: unknown, at: Tokens): FieldError[] {
  const faults = findObjectFaults(shape, input, at);
  if (!isObject(input)) return faults;
  for (const [name, member] of membersOf(shape)) {
    const value = Object.hasOwn(input, name) ? input[name] : undefined;
    if (value !== undefined) faults.push(...memberFaults(member, value, [...at, name]));
  }
  return faults;
}

function memberFaults(member: Member, value: unknown, at: Tokens): FieldError[] {
  switch (member.kind) {
    case 'value':
      return valueFaults(member.rule, value, at);
    case 'known':
      return isObject(value) ? knownFaults(member.rule, value, at) : [];
    case 'part':
      return isObject(value) ? findRecordFaults(member.shape(), value, at) : [];
    case 'items':
      return Array.isArray(value) ? itemFaults(member.shape(), value, at) : [];
  }
}

function knownFaults(rule: ValueRule, fact: Readonly<Record<string, unknown>>, at: Tokens): FieldError[] {
  const faults = findRecordFaults(KnownDto, fact, at);
  const { value } = fact;
  if (value === undefined) return faults;
  const fault = rule.faultOf(value);
  const whole = fault === null ? [] : [{ pointer: jsonPointer([...at, 'value']), detail: fault }];
  return [...faults, ...whole, ...valueFaults(rule, value, [...at, 'value'])];
}

/** What is inside a value; that the value itself is wrong has been said already. */
function valueFaults(rule: ValueRule, value: unknown, at: Tokens): FieldError[] {
  const { itemFault, part, relation } = rule;
  if (Array.isArray(value) && itemFault !== undefined) {
    return value.flatMap((item: unknown, index) => {
      const detail = itemFault(item);
      return detail === null ? [] : [{ pointer: jsonPointer([...at, index]), detail }];
    });
  }
  if (part === undefined || !isObject(value)) return [];
  const between = relation?.(value) ?? null;
  return [
    ...findRecordFaults(part(), value, at),
    ...(between === null
      ? []
      : [{ pointer: `${jsonPointer(at)}${between.pointer}`, detail: between.detail }]),
  ];
}

function itemFaults(shape: Shape, items: readonly unknown[], at: Tokens): FieldError[] {
  if (items.length > MOST_ITEMS) {
    return [{ pointer: jsonPointer(at), detail: `Must be at most ${MOST_ITEMS} items.` }];
  }
  const seen = new Set<unknown>();
  return items.flatMap((item, index) => {
    const faults = findRecordFaults(shape, item, [...at, index]);
    const itemId = isObject(item) ? item['id'] : undefined;
    if (itemId !== undefined && seen.has(itemId)) {
      const pointer = jsonPointer([...at, index, 'id']);
      faults.push({ pointer, detail: 'Must differ from every earlier id of the list.' });
    }
    seen.add(itemId);
    return faults;
  });
}
