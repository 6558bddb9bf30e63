import { describe, expect, it } from 'vitest';
import { problemOf, type ProblemStatus } from '../../shared/wire/problem.js';
import { sortFaults } from '../../shared/wire/sort-faults.js';

describe('problem of an input', () => {
  const errors = [{ pointer: '/weather', detail: 'No such member: take it out.' }];

  // RFC 9457, section 3.1: type is a URI reference, title the same for every problem of a type.
  it.each<[ProblemStatus, string]>([
    [400, '/problems/unreadable-input'],
    [422, '/problems/invalid-facts'],
  ])('of status %i', (status, type) => {
    const problem = problemOf(status, errors, 'calls/first.json');
    expect(problem).toEqual({
      type,
      title: expect.any(String) as string,
      status,
      source: 'calls/first.json',
      errors,
    });
    expect(new URL(problem.type, 'https://desk.example').pathname).toBe(type);
    expect(problemOf(status, [], '-').title).toBe(problem.title);
  });
});

describe('the order of faults', () => {
  it('is that of their pointers: positions by number, the whole before its parts, one fault a pointer', () => {
    const pointers = [
      '/people/10',
      '/people/9/id',
      '/people/9',
      '/damage',
      '',
      '/people/1a',
      '/people/9',
      '/people/x',
    ];
    const sorted = sortFaults(pointers.map((pointer, index) => ({ pointer, detail: String(index) })));
    expect(sorted.map(({ pointer }) => pointer)).toEqual([
      '',
      '/damage',
      '/people/9',
      '/people/9/id',
      '/people/10',
      '/people/1a',
      '/people/x',
    ]);
    expect(sorted[2]?.detail).toBe('2');
  });
});
