import type { MigrationInterface, QueryRunner } from 'typeorm';

/**
 * One step of the schema, forward only: what people recorded since would be lost on the way back, so the way back is
 * the copy from before. A step runs in one transaction; `transaction = false` does not compile here, as without it
 * SQLite deletes the rows that refer to a table that is built anew.
 *
 * The name of a step ends in thirteen digits, a time in milliseconds later than that of every other step.
 */
export abstract class Migration implements MigrationInterface {
  declare readonly transaction?: never;

  abstract up(runner: QueryRunner): Promise<void>;

  down(): Promise<void> {
    return Promise.reject(new Error('Migrations go forward only: restore a copy from before.'));
  }
}
