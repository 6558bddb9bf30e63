import { Check, Column, type ColumnOptions, ForeignKey } from 'typeorm';
import { DAY_TEXT, INSTANT_TEXT, JSON_TEXT, WHOLE_NUMBER } from './column-values.js';
import { snakeCase } from './snake-case-names.js';

/**
 * The columns of rows, the other half of migrations/kit/columns.ts: the drift test fails when the two differ. Every
 * type is written out, as compilers disagree on what they tell about a property.
 */
interface Options {
  nullable?: boolean;
  /** Part of the primary key. */
  primary?: boolean;
  /** The value is never loaded unless a query asks for it by name. */
  hidden?: boolean;
}

function column(
  type: ColumnOptions,
  { nullable = false, primary = false, hidden = false }: Options,
): PropertyDecorator {
  return Column({ ...type, nullable, primary, select: !hidden });
}

const both =
  (...decorators: PropertyDecorator[]): PropertyDecorator =>
  (row, property) => {
    for (const decorate of decorators) decorate(row, property);
  };

const ID: ColumnOptions = { type: 'varchar', length: 36 };

/** The primary key. */
export const IdColumn = (): PropertyDecorator => column(ID, { primary: true });

/** The id of a row of another table, named by its table: two rows never import each other. */
export function ReferenceColumn(table: string, options: Options = {}): PropertyDecorator {
  return both(column(ID, options), ForeignKey(table));
}

export const TextColumn = (options: Options = {}): PropertyDecorator => column({ type: 'text' }, options);

export const JsonColumn = (options: Options = {}): PropertyDecorator =>
  column({ type: 'text', transformer: JSON_TEXT }, options);

/** A `string` property: any instant of RFC 3339 goes in, UTC to the millisecond comes out. */
export const InstantColumn = (options: Options = {}): PropertyDecorator =>
  column({ type: 'varchar', length: 24, transformer: INSTANT_TEXT }, options);

/** A `string` property such as 2026-06-13. */
export const DayColumn = (options: Options = {}): PropertyDecorator =>
  column({ type: 'varchar', length: 10, transformer: DAY_TEXT }, options);

export const IntegerColumn = (options: Options = {}): PropertyDecorator =>
  column({ type: 'integer', transformer: WHOLE_NUMBER }, options);

/** Money in cents. */
export const CentsColumn = IntegerColumn;

export const NumberColumn = (options: Options = {}): PropertyDecorator =>
  column({ type: 'double precision' }, options);

export const FlagColumn = (options: Options = {}): PropertyDecorator => column({ type: 'boolean' }, options);

export function ChoiceColumn(oneOf: readonly string[], options: Options = {}): PropertyDecorator {
  const values = oneOf.map((value) => `'${value.replaceAll("'", "''")}'`).join(', ');
  return both(column({ type: 'varchar', length: 40 }, options), (row, property) =>
    Check(`"${snakeCase(String(property))}" IN (${values})`)(row, property),
  );
}
