import type { FieldError } from '../kernel/field-error.js';
import { Fact, MayBeAbsent, type FaultOf } from './declare-fact.js';
import { isObject } from './is-object.js';

export type JsonSchema = Readonly<Record<string, unknown>>;
export type Shape = new () => object;

/** What a value may be: how it is asked for, what is wrong with one, and the same as JSON Schema. */
export interface ValueRule {
  readonly expected: string;
  readonly faultOf: FaultOf;
  readonly schema: JsonSchema;
  /** A list's rule for each of its values, so that a fault names the value. */
  readonly itemFault?: FaultOf;
  /** The class by which a value that is an object is looked at. */
  readonly part?: () => Shape;
  /** Faults between members that are each well formed: the member and what to do. */
  readonly relation?: (value: Readonly<Record<string, unknown>>) => FieldError | null;
}

/** A member as it was declared: a plain value, a fact with provenance, an object, or a list of items with ids. */
export type Member =
  | { readonly kind: 'value' | 'known'; readonly rule: ValueRule; readonly required: boolean }
  | { readonly kind: 'part' | 'items'; readonly shape: () => Shape; readonly required: boolean };

const declared = new Map<object, Map<string, Member>>();

/** The members of a class of the record, in the order in which they were declared; those of the class it extends first. */
export function membersOf(shape: Shape): ReadonlyMap<string, Member> {
  const own = declared.get(shape.prototype as object) ?? new Map<string, Member>();
  const base = Object.getPrototypeOf(shape) as Shape;
  return base === Function.prototype ? own : new Map([...membersOf(base), ...own]);
}

/** A value that may be left out. */
export const Value = (rule: ValueRule): PropertyDecorator =>
  declare({ kind: 'value', rule, required: false }, rule);

/** A value that must be there. */
export const Needed = (rule: ValueRule): PropertyDecorator =>
  declare({ kind: 'value', rule, required: true }, rule);

/** A fact with how it is known, about a value of the rule; it may be left out. */
export const KnownFact = (rule: ValueRule): PropertyDecorator =>
  declare({ kind: 'known', rule, required: false }, FACT_OBJECT);

/** An object of another class; it may be left out. */
export const Part = (shape: () => Shape): PropertyDecorator =>
  declare({ kind: 'part', shape, required: false }, OBJECT);

/** A list of objects of another class, each with an id that no other of the list has; it may be left out. */
export const Items = (shape: () => Shape): PropertyDecorator =>
  declare({ kind: 'items', shape, required: false }, LIST);

function declare(member: Member, { expected, faultOf }: Pick<ValueRule, 'expected' | 'faultOf'>) {
  const rule = Fact(expected, faultOf);
  const absent = MayBeAbsent();
  return (target: object, property: string | symbol): void => {
    const members = declared.get(target) ?? new Map<string, Member>();
    declared.set(target, members.set(String(property), member));
    if (!member.required) absent(target, property);
    rule(target, property);
  };
}

const mustBe =
  (expected: string, fits: (value: unknown) => boolean): FaultOf =>
  (value) =>
    fits(value) ? null : `Must be ${expected}.`;

const FACT = 'a fact: {"value", "known": saw, told, read-off or computed, "by", "learnedAt"}';
const FACT_OBJECT = { expected: FACT, faultOf: mustBe(FACT, isObject) };
const OBJECT = { expected: 'an object', faultOf: mustBe('an object', isObject) };
const LIST_WORDS = 'a list of objects, each with an id';
const LIST = { expected: LIST_WORDS, faultOf: mustBe(LIST_WORDS, Array.isArray) };
