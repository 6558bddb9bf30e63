import { readInput } from './read-input.js';

const DEFAULT_LIMIT = 25;

/** Behind which row a page begins: the text that the list is sorted by, and the id that tells equals apart. */
export interface Cursor {
  readonly sort: string;
  readonly id: string;
}

/** What a query of a list comes to. */
export interface PageRequest {
  readonly limit: number;
  readonly after: Cursor | null;
}

/**
 * The page that a checked query asks for.
 * @throws ProblemException 422 for a cursor that this service never gave
 */
export function pageRequest({ limit, after }: { limit?: string; after?: string }): PageRequest {
  return {
    limit: limit === undefined ? DEFAULT_LIMIT : Number(limit),
    after: after === undefined ? null : readCursor(after),
  };
}

/**
 * Makes a page of rows that were read one more than asked for: that one tells whether there is a next page.
 * @param cursorOf the row as a place in the order that the rows were read in
 */
export function pageOf<Row>(
  rows: readonly Row[],
  { limit }: PageRequest,
  cursorOf: (row: Row) => Cursor,
): { items: Row[]; next: string | null } {
  const items = rows.slice(0, limit);
  const last = items.at(-1);
  return { items, next: rows.length > limit && last !== undefined ? writeCursor(cursorOf(last)) : null };
}

function writeCursor({ sort, id }: Cursor): string {
  return Buffer.from(JSON.stringify([sort, id])).toString('base64url');
}

function readCursor(text: string): Cursor {
  const [sort, id] = parsed(Buffer.from(text, 'base64url').toString());
  if (typeof sort === 'string' && typeof id === 'string') return { sort, id };
  const detail = 'Must be the `next` of the page before, as it was given.';
  return readInput<Cursor>({ ok: false, errors: [{ pointer: '/after', detail }] }, 'query');
}

function parsed(text: string): unknown[] {
  try {
    const value: unknown = JSON.parse(text);
    return Array.isArray(value) ? value : [];
  } catch (refusal) {
    if (refusal instanceof SyntaxError) return [];
    throw refusal;
  }
}
