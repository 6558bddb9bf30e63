import { getMetadataStorage, validateSync, type ValidationError } from 'class-validator';
import type { FieldError } from '../kernel/field-error.js';
import { jsonPointer } from '../kernel/json-pointer.js';
import type { ListContext } from './declare-fact.js';
import { isObject } from './is-object.js';
import { suggestWord } from './suggest-word.js';

type Tokens = readonly (string | number)[];

/**
 * Faults of one object by the rules of its class, each at its own pointer: members that are missing, wrong
 * or unknown, and the items of its lists of words. Objects inside it are looked at on their own, because the
 * validator passes over a null among nested objects and names no item of a list of words.
 * @example findObjectFaults(AmountRangeDto, { low: 1 }, ['damage', 0, 'amount'])
 * // [{ pointer: '/damage/0/amount/high', detail: 'Missing: give the most it can be, in US dollars.' }]
 */
export function findObjectFaults(type: new () => object, input: unknown, at: Tokens): FieldError[] {
  if (!isObject(input)) return [{ pointer: jsonPointer(at), detail: 'Must be an object.' }];
  const members = membersOf(type);
  const copy = new type() as Record<string, unknown>;
  const faults: FieldError[] = [];
  for (const name of Object.keys(input)) {
    // Only known members are copied, so that "__proto__" or "constructor" is a name like any other.
    if (members.includes(name)) copy[name] = input[name];
    else if (input[name] !== undefined) faults.push(unknownMember(name, members, at));
  }
  const errors = validateSync(copy, { stopAtFirstError: true, validationError: { target: false } });
  return [...faults, ...errors.flatMap((error) => memberFaults(error, at))];
}

function unknownMember(name: string, members: readonly string[], at: Tokens): FieldError {
  const near = suggestWord(name, members);
  const advice = near === null ? 'take it out.' : `did you mean ${near}?`;
  return { pointer: jsonPointer([...at, name]), detail: `No such member: ${advice}` };
}

function memberFaults({ property, value, constraints, contexts }: ValidationError, at: Tokens): FieldError[] {
  const list = contexts?.['list'] as ListContext | undefined;
  if (list !== undefined && Array.isArray(value)) {
    return value.flatMap((item: unknown, index) => {
      const detail = list.itemFault(item);
      return detail === null ? [] : [{ pointer: jsonPointer([...at, property, index]), detail }];
    });
  }
  const pointer = jsonPointer([...at, property]);
  return Object.values(constraints ?? {}).map((detail) => ({ pointer, detail }));
}

const memberNames = new Map<new () => object, readonly string[]>();

/** Names of the members that a class has rules for. */
function membersOf(type: new () => object): readonly string[] {
  const before = memberNames.get(type);
  if (before !== undefined) return before;
  const rules = getMetadataStorage().getTargetValidationMetadatas(type, '', false, false);
  const names = [...new Set(rules.map((rule) => rule.propertyName))];
  memberNames.set(type, names);
  return names;
}
