import type { FastifyReply } from 'fastify';
import { describe, expect, it } from 'vitest';
import { readPageQuery } from '../../shared/wire/page-query.dto.js';
import { KeyUsedBeforeError } from '../../src/server/platform/database/create-once.js';
import { DatabaseError } from '../../src/server/platform/database/database-errors.js';
import { pageOf, pageRequest } from '../../src/server/platform/http/cursor.js';
import { answerCreated, assertFresh, entityTag } from '../../src/server/platform/http/entity-tag.js';
import { readIdempotencyKey } from '../../src/server/platform/http/idempotency-key.js';
import { problemOfDatabase } from '../../src/server/platform/http/problem-of-database.js';
import { ProblemException, type ProblemDocument } from '../../src/server/platform/http/problem.js';

function problemOf(work: () => unknown): ProblemDocument | undefined {
  try {
    work();
    return undefined;
  } catch (error) {
    if (error instanceof ProblemException) return error.problem;
    throw error;
  }
}

describe('If-Match', () => {
  const current = { id: 'a', version: 3, name: 'PWC 7', seats: 2 };
  const yours = { name: 'PWC 8', seats: 2 };

  it.each([[entityTag(current)], ['"1", "3"'], [' "3" ']])('%s lets the change of version 3 pass', (tag) => {
    expect(problemOf(() => assertFresh(tag, current, yours))).toBeUndefined();
  });

  // RFC 9110, 13.1.1: If-Match compares strongly, so a weak tag never matches. RFC 6585, 3: 428.
  it.each([
    [undefined, 428],
    ['*', 428],
    ['"2"', 412],
    ['W/"3"', 412],
    ['3', 412],
    ['', 412],
  ])('%s is refused with %d', (tag, status) => {
    expect(problemOf(() => assertFresh(tag, current, yours))?.status).toBe(status);
  });

  it('of an older version is answered with both versions and what differs', () => {
    expect(problemOf(() => assertFresh('"2"', current, yours))).toMatchObject({
      type: '/problems/changed-meanwhile',
      current,
      yours,
      errors: [{ pointer: '/name' }],
    });
  });
});

it('a create is answered with its address and tag', () => {
  const headers: Record<string, string> = {};
  let status = 0;
  const reply = {
    header(name: string, value: string) {
      headers[name] = value;
      return this;
    },
    status(code: number) {
      status = code;
      return this;
    },
  };
  answerCreated(reply as unknown as FastifyReply, '/api/craft', { id: 'a', version: 1 });
  expect({ status, headers }).toEqual({ status: 201, headers: { location: '/api/craft/a', etag: '"1"' } });
});

describe('Idempotency-Key', () => {
  const uuid = '7d2f6f4e-6f0f-4b44-9d3c-0a8c7d1f8f11';
  it.each([[uuid], [`"${uuid}"`], [` ${uuid} `]])('%s is read', (header) => {
    expect(readIdempotencyKey(header)).toBe(uuid);
  });
  it.each([
    [undefined],
    [''],
    ['short'],
    ['x'.repeat(201)],
    ['blank in the middle of it'],
    ['key-with-é-in-it-12'],
  ])('%s is refused', (header) => {
    expect(problemOf(() => readIdempotencyKey(header))).toMatchObject({
      status: 400,
      type: '/problems/no-idempotency-key',
    });
  });
});

describe('a page', () => {
  const rows = Array.from({ length: 60 }, (_, index) => ({
    id: `id-${index}`,
    sort: `Señor "${String(index).padStart(2, '0')}"`,
  }));
  const read = (query: unknown) => {
    const reading = readPageQuery(query);
    if (!reading.ok) throw new Error(JSON.stringify(reading.errors));
    const page = pageRequest(reading.value);
    const { after } = page;
    const from = after === null ? 0 : rows.findIndex(({ id }) => id === after.id) + 1;
    return pageOf(rows.slice(from, from + page.limit + 1), page, (row) => row);
  };

  it.each([
    [{}, [25, 25, 10]],
    [{ limit: '20' }, [20, 20, 20]],
    [{ limit: '100' }, [60]],
  ])('after a page is the rest, until there is no next (%j)', (query, sizes) => {
    const seen: string[] = [];
    const counts: number[] = [];
    let next: string | null = null;
    do {
      const page = read(next === null ? query : { ...query, after: next });
      seen.push(...page.items.map(({ id }) => id));
      counts.push(page.items.length);
      next = page.next;
    } while (next !== null);
    expect(counts).toEqual(sizes);
    expect(seen).toEqual(rows.map(({ id }) => id));
  });

  it.each([
    [{ limit: '0' }, '/limit'],
    [{ limit: '101' }, '/limit'],
    [{ limit: ['5', '6'] }, '/limit'],
    [{ after: 'not a cursor' }, '/after'],
    [{ page: '2' }, '/page'],
  ])('refuses %j', (query, pointer) => {
    expect(readPageQuery(query)).toMatchObject({ ok: false, errors: [{ pointer }] });
  });

  it.each([['bm90IGpzb24'], ['WzEsMl0'], ['e30'], ['____']])(
    'refuses the cursor %s, which is none of ours',
    (after) => {
      expect(problemOf(() => pageRequest({ after }))).toMatchObject({
        status: 422,
        source: 'query',
        errors: [{ pointer: '/after' }],
      });
    },
  );
});

describe('a failure of the database', () => {
  it.each([
    [new DatabaseError('DATABASE.BUSY', 'x'), 503],
    [new DatabaseError('DATABASE.CONFLICT', 'x'), 503],
    [new DatabaseError('DATABASE.CONNECTION', 'x'), 503],
    [new DatabaseError('DATABASE.UNIQUE', 'x', 'uq_account_email'), 409],
    [new KeyUsedBeforeError(), 422],
  ])('%s is answered with %#', (error, status) => {
    const problem = problemOfDatabase(error);
    expect(problem?.status).toBe(status);
    expect(JSON.stringify(problem)).not.toContain('uq_');
  });

  it.each([[new DatabaseError('DATABASE.REFERENCE', 'x')], [new Error('x')], ['x']])(
    '%s is a fault of ours',
    (error) => {
      expect(problemOfDatabase(error)).toBeUndefined();
    },
  );
});
