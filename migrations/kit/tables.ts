import { type QueryRunner, Table } from 'typeorm';
import { checkOf, type Column } from './columns.js';
import { nameRule } from './constraint-names.js';

export interface Index {
  columns: string[];
  unique?: boolean;
  /** Only the rows that this condition keeps, as in `"ended_at" IS NULL`. */
  where?: string;
  /** Needed when there are two indexes over the same columns. */
  name?: string;
}

export interface TableRules {
  /** Instead of an `id` column. */
  primary?: string[];
  /** Each a group of columns whose values together are given once. */
  unique?: string[][];
  indexes?: Index[];
  /** Conditions over several columns, by name. */
  checks?: Record<string, string>;
}

/** Creates a table with named rules: the same on both engines, and equal to what the row's decorators declare. */
export async function createTable(
  runner: QueryRunner,
  table: string,
  columns: readonly Column[],
  rules: TableRules = {},
): Promise<void> {
  const { primary = [], unique = [], indexes = [], checks = {} } = rules;
  await runner.createTable(
    new Table({
      name: table,
      columns: columns.map((column) => {
        const isPrimary = column.isPrimary === true || primary.includes(column.name);
        return isPrimary
          ? { ...column, isPrimary, primaryKeyConstraintName: nameRule('pk', table, []) }
          : column;
      }),
      uniques: unique.map((columnNames) => ({ name: nameRule('uq', table, columnNames), columnNames })),
      indices: indexes.map(({ columns: columnNames, unique: isUnique = false, where, name }) => ({
        name: name ?? nameRule('ix', table, columnNames),
        columnNames,
        isUnique,
        ...(where === undefined ? {} : { where }),
      })),
      foreignKeys: columns.flatMap(({ name, of }) =>
        of === undefined
          ? []
          : [
              {
                name: nameRule('fk', table, [name]),
                columnNames: [name],
                referencedTableName: of,
                referencedColumnNames: ['id'],
              },
            ],
      ),
      checks: [
        ...columns.flatMap((column) => {
          const expression = checkOf(column);
          return expression === undefined
            ? []
            : [{ name: nameRule('ck', table, [column.name]), columnNames: [column.name], expression }];
        }),
        ...Object.entries(checks).map(([name, expression]) => ({ name, expression })),
      ],
    }),
  );
}

/**
 * Adds a column to a table that may hold rows already. In plain SQL: TypeORM's own way builds the whole table anew on
 * SQLite, which drops its triggers without a word and can delete the rows that refer to it.
 */
export async function addColumn(runner: QueryRunner, table: string, column: Column): Promise<void> {
  const { name, type, length, isNullable, of } = column;
  if (isNullable !== true) throw new Error(`${table}.${name}: rows that are there already need it nullable.`);
  if (of !== undefined) throw new Error(`${table}.${name}: a reference comes with a table of its own.`);
  const expression = checkOf(column);
  const check =
    expression === undefined ? '' : ` CONSTRAINT "${nameRule('ck', table, [name])}" CHECK (${expression})`;
  const size = length === undefined ? '' : `(${length})`;
  await runner.query(`ALTER TABLE "${table}" ADD COLUMN "${name}" ${type}${size}${check}`);
}
