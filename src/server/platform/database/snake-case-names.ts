import { DefaultNamingStrategy, type Table } from 'typeorm';

const nameOf = (table: Table | string): string => (typeof table === 'string' ? table : table.name);

/** `snakeCase('occurredAt')` is `'occurred_at'`. */
export const snakeCase = (name: string): string =>
  name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);

/**
 * Columns in snake_case, so that plain SQL reads well on both engines, and constraints with names that a person can
 * tell apart: migrations/kit/constraint-names.ts gives the same ones, and the drift test compares the two.
 */
export class SnakeCaseNames extends DefaultNamingStrategy {
  override columnName(property: string, custom: string | undefined): string {
    return custom ?? snakeCase(property);
  }

  override primaryKeyName(table: Table | string): string {
    return `pk_${nameOf(table)}`;
  }

  override uniqueConstraintName(table: Table | string, columns: string[]): string {
    return ['uq', nameOf(table), ...columns].join('_');
  }

  override foreignKeyName(table: Table | string, columns: string[]): string {
    return ['fk', nameOf(table), ...columns].join('_');
  }

  override indexName(table: Table | string, columns: string[]): string {
    return ['ix', nameOf(table), ...columns].join('_');
  }

  /** The checks of this house begin with the column they guard: `"role" IN (…)` is ck_account_role. */
  override checkConstraintName(table: Table | string, expression: string): string {
    const column = /^"(\w+)"/.exec(expression)?.[1];
    if (column === undefined) throw new Error(`Give the check ${expression} of ${nameOf(table)} a name.`);
    return `ck_${nameOf(table)}_${column}`;
  }
}
