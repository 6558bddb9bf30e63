import { describe, expect, it } from 'vitest';
import type { FieldError } from '../../shared/kernel/field-error.js';
import { readIncidentFacts } from '../../shared/wire/read-incident-facts.js';
import { factDocuments } from './fact-fixtures.js';

const [, plain] = factDocuments('good').find(([name]) => name === 'two-craft-collide-in-the-ski-lane') ?? [];
const facts = plain as Record<string, unknown>;

function errorsOf(input: unknown): readonly FieldError[] {
  const reading = readIncidentFacts(input);
  return reading.ok ? [] : reading.errors;
}

function nested(depth: number): unknown {
  let value: unknown = 'bottom';
  for (let level = 0; level < depth; level += 1) value = [value];
  return value;
}

describe('reading incident facts', () => {
  it('hands back the facts that it was given', () => {
    const reading = readIncidentFacts(facts);
    expect(reading.ok && reading.facts).toBe(facts);
  });

  it.each([
    [
      'a missing member',
      { ...facts, peopleAssessment: undefined },
      /^Missing: give one of complete, partial/,
    ],
    ['a word of no list', { ...facts, oilSheen: 'maybe' }, /^Must be one of yes, no, unknown\.$/],
    ['a slip in a word', { ...facts, damageAssessment: 'Partail' }, /Did you mean partial\?$/],
    ['a slip in a term', { ...facts, casualtyTypes: ['Fall Overbord'] }, /Did you mean fall-overboard\?$/],
    [
      'a slip in the name of a member',
      { ...facts, oilsheen: 'no' },
      /^No such member: did you mean oilSheen\?$/,
    ],
    ['a member of no sense here', { ...facts, weather: 'fine' }, /^No such member: take it out\.$/],
    ['an offset for a zone', { ...facts, place: { timeZone: '-05:00' } }, /IANA name.*not a name/],
  ])('says what is wrong and how to put it right: %s', (_, input, detail) => {
    expect(errorsOf(input).map((error) => error.detail)).toEqual([expect.stringMatching(detail)]);
  });

  it('never repeats what was typed, which may be about a person', () => {
    const typed = 'jane-doe-open-fracture';
    const input = { ...facts, people: [{ id: 'p1', outcome: typed, care: typed, treatments: [typed] }] };
    expect(errorsOf(input)).toHaveLength(3);
    expect(JSON.stringify(errorsOf(input))).not.toContain('jane');
  });

  it('names every fault of a long list, in the order of the list', () => {
    const people = Array.from({ length: 12 }, (_, index) => ({ id: `p${index}`, outcome: 'hurt' }));
    expect(errorsOf({ ...facts, people }).map((error) => error.pointer)).toEqual(
      people.map((_, index) => `/people/${index}/outcome`),
    );
  });

  it('takes a crowd and a long list of damage', () => {
    const people = Array.from({ length: 700 }, (_, index) => ({ id: `p${index}`, outcome: 'unhurt' }));
    const damage = Array.from({ length: 1500 }, (_, index) => ({ id: `d${index}`, of: 'vessel', amount: 1 }));
    expect(errorsOf({ ...facts, people, damage })).toEqual([]);
  });

  it('names a hundred thousand unknown members without falling over', () => {
    const many = Object.fromEntries(Array.from({ length: 100_000 }, (_, index) => [`m${index}`, 1]));
    expect(errorsOf({ ...facts, ...many })).toHaveLength(100_000);
  });

  it.each([
    ['an unknown member', { ...facts, deep: nested(100_000) }, ['/deep']],
    ['a list of words', { ...facts, casualtyTypes: [nested(100_000)] }, ['/casualtyTypes/0']],
    [
      'an amount',
      { ...facts, damage: [{ id: 'd', of: 'vessel', amount: nested(100_000) }] },
      ['/damage/0/amount'],
    ],
    ['a person', { ...facts, people: [nested(100_000)] }, ['/people/0']],
  ])('is not led into the depth of %s', (_, input, pointers) => {
    expect(errorsOf(input).map((error) => error.pointer)).toEqual(pointers);
  });

  it('leaves the prototypes of the language as they are', () => {
    readIncidentFacts(JSON.parse('{"__proto__":{"polluted":1},"place":{"__proto__":{"polluted":1}}}'));
    expect(Object.getOwnPropertyNames(Object.prototype)).not.toContain('polluted');
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
  });

  it('takes no fact from a prototype', () => {
    const heir: unknown = Object.create(facts);
    expect(errorsOf(heir).map((error) => error.pointer)).toContain('/occurredAt');
  });

  it.each([undefined, Symbol('x'), 3n, () => facts])('refuses what JSON cannot hold: %s', (input) => {
    expect(errorsOf(input)).toEqual([{ pointer: '', detail: 'Must be an object.' }]);
  });
});
