import type { Reading } from '../kernel/reading.js';
import { Fact, MayBeAbsent } from './declare-fact.js';
import { findObjectFaults } from './find-object-faults.js';

const LIMIT = 'a whole number from 1 to 100';
const CURSOR = 'the `next` of the page before, as it was given';

/** Which part of a list is asked for: the query of every address that answers with a page. */
export class PageQueryDto {
  @MayBeAbsent()
  @Fact(LIMIT, (value) => (/^([1-9]\d?|100)$/.test(String(value)) ? null : `Must be ${LIMIT}.`))
  limit?: string;

  @MayBeAbsent()
  @Fact(CURSOR, (value) =>
    typeof value === 'string' && /^[\w-]{1,2000}$/.test(value) ? null : `Must be ${CURSOR}.`,
  )
  after?: string;
}

/**
 * Reads the query of a list; a list that takes more than the two members hands its own class in.
 * @example readPageQuery({ limit: '0' })
 * // { ok: false, errors: [{ pointer: '/limit', detail: 'Must be a whole number from 1 to 100.' }] }
 */
export function readPageQuery(query: unknown): Reading<PageQueryDto>;
export function readPageQuery<T extends PageQueryDto>(query: unknown, type: new () => T): Reading<T>;
export function readPageQuery(query: unknown, type: new () => object = PageQueryDto): Reading<PageQueryDto> {
  const errors = findObjectFaults(type, query, []);
  return errors.length > 0 ? { ok: false, errors } : { ok: true, value: query as PageQueryDto };
}

/** Part of a list in a fixed order; `next` is null on the last one, and otherwise the `after` of the next. */
export interface Page<T> {
  readonly items: readonly T[];
  readonly next: string | null;
}
