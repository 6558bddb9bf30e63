import { readWallClock } from '../../../shared/time/read-wall-clock.js';

/** What narrows the list, by the names under which the address of the page holds them. */
const FILTER_NAMES = [
  'status',
  'reports',
  'outcome',
  'hurt',
  'craft',
  'station',
  'casualty',
  'from',
  'until',
] as const;
export type FilterName = (typeof FILTER_NAMES)[number];

const NAMES = ['q', 'order', 'after', ...FILTER_NAMES] as const;
export type QueryName = (typeof NAMES)[number];

/** What is searched for, as the address of the page has it; `from` and `until` are days, both included. */
export type RegisterQuery = Readonly<Partial<Record<QueryName, string>>>;

export function readQuery(search: string): RegisterQuery {
  const given = new URLSearchParams(search);
  return Object.fromEntries(
    NAMES.flatMap((name) => {
      const value = given.get(name)?.trim() ?? '';
      return value === '' ? [] : [[name, value]];
    }),
  );
}

/** `?q=sandbar&reports=overdue`, or nothing where nothing is asked for. */
export function writeQuery(query: RegisterQuery): string {
  const written = NAMES.flatMap((name) => (query[name] ? [[name, query[name]]] : []));
  return written.length === 0 ? '' : `?${new URLSearchParams(written).toString()}`;
}

/**
 * A query with something else in it. Whatever is searched for anew begins at the first page.
 * @example withPart({ q: 'dam', after: 'x' }, { q: 'cove' }) // { q: 'cove' }
 */
export function withPart(query: RegisterQuery, part: Partial<Record<QueryName, string>>): RegisterQuery {
  const { after, ...rest } = query;
  void after;
  return { ...rest, ...part };
}

/**
 * What the service is asked: days become the instants at which they begin and end in a zone.
 * @example askedOf({ from: '2026-06-13' }, 'America/Chicago') // { openedFrom: '2026-06-13T00:00:00-05:00' }
 */
export function askedOf(query: RegisterQuery, zone: string): Record<string, string> {
  const { from, until, after, order, ...rest } = query;
  void [after, order];
  return {
    ...rest,
    ...(from !== undefined && { openedFrom: startOf(from, zone) }),
    ...(until !== undefined && { openedUntil: startOf(dayAfter(until), zone) }),
  };
}

/** A day that is none goes to the service as it is, which says what is wrong with it. */
const startOf = (day: string, zone: string): string => readWallClock(`${day}T00:00`, zone) ?? day;

function dayAfter(day: string): string {
  const at = Date.parse(`${day}T00:00:00Z`);
  return Number.isNaN(at) ? day : new Date(at + 86_400_000).toISOString().slice(0, 10);
}
