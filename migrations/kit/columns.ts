import type { TableColumnOptions } from 'typeorm';

/** A column as both engines understand it. The decorators of platform/database/columns.ts are the other half. */
export interface Column extends TableColumnOptions {
  /** The values it may hold. */
  oneOf?: readonly string[];
  /** The table whose `id` it holds. */
  of?: string;
}

interface Options {
  nullable?: boolean;
}

const column = (name: string, type: string, { nullable = false }: Options): Column => ({
  name,
  type,
  isNullable: nullable,
});
const varchar = (name: string, length: number, options: Options): Column => ({
  ...column(name, 'varchar', options),
  length: String(length),
});

const ID_LENGTH = 36;

/** The primary key: an id that the service makes. */
export const id = (name = 'id'): Column => ({ ...varchar(name, ID_LENGTH, {}), isPrimary: true });

/** The id of a row of another table, which can then not be deleted. */
export const reference = (name: string, of: string, options: Options = {}): Column => ({
  ...varchar(name, ID_LENGTH, options),
  of,
});

/** Text of any length: the wire shapes limit it, as SQLite knows no lengths and PostgreSQL needs none. */
export const text = (name: string, options: Options = {}): Column => column(name, 'text', options);

/** A JSON document as text: what was stored comes back to the byte, on either engine. */
export const json = (name: string, options: Options = {}): Column => column(name, 'text', options);

/** An instant as ISO-8601 in UTC to the millisecond: 24 characters, so that text order is time order. */
export const instant = (name: string, options: Options = {}): Column => varchar(name, 24, options);

/** A day of the calendar, such as 2026-06-13. */
export const day = (name: string, options: Options = {}): Column => varchar(name, 10, options);

/** A whole number of 32 bits. */
export const integer = (name: string, options: Options = {}): Column => column(name, 'integer', options);

/** Money in cents, up to 21,474,836.47 dollars. */
export const cents = (name: string, options: Options = {}): Column => integer(name, options);

/** A number of 64 bits, binary: a position, a measure. Never money. */
export const number = (name: string, options: Options = {}): Column =>
  column(name, 'double precision', options);

export const flag = (name: string, options: Options = {}): Column => column(name, 'boolean', options);

/**
 * One word of a closed list. SQLite cannot change the list later without building the table anew: use `text` for a list
 * that may grow, and let the wire shapes check it.
 */
export const choice = (name: string, oneOf: readonly string[], options: Options = {}): Column => ({
  ...varchar(name, 40, options),
  oneOf,
});

/** `"role" IN ('staff', 'manager')`, exactly as the decorator writes it. */
export function checkOf({ name, oneOf }: Column): string | undefined {
  return oneOf && `"${name}" IN (${oneOf.map((value) => `'${value.replaceAll("'", "''")}'`).join(', ')})`;
}
