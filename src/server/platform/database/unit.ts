import type { EntityManager, QueryRunner } from 'typeorm';
import { databaseError, isConflict } from './database-errors.js';

type Query = (sql: string, parameters?: unknown[], structured?: boolean) => Promise<unknown>;

/**
 * One unit of work under way, on a runner of its own. All of it stands or none: a statement that failed, a joined part
 * that failed and a statement that nobody awaited each undo the whole, even if the work went on as if nothing had
 * happened. PostgreSQL gives up a transaction at the first failed statement and then answers COMMIT with a quiet
 * rollback; here both engines say so.
 */
export class Unit {
  readonly effects: (() => unknown)[] = [];
  private open = true;
  private failure: { error: unknown } | undefined;
  private readonly running = new Set<Promise<unknown>>();

  private constructor(private readonly runner: QueryRunner) {
    const query = runner.query.bind(runner) as Query;
    const guarded: Query = (...statement) => {
      if (!this.open && !['COMMIT', 'ROLLBACK'].includes(statement[0])) {
        return Promise.reject(databaseError('DATABASE.UNIT_ENDED'));
      }
      const result = query(...statement);
      this.running.add(result);
      const settled = (): boolean => this.running.delete(result);
      result.then(settled, (error: unknown) => {
        settled();
        this.fail(error);
      });
      return result;
    };
    Object.assign(runner, { query: guarded });
  }

  /** Does the work in a transaction; `within` carries the unit to whatever the work calls. */
  static async run<T>(
    runner: QueryRunner,
    within: (unit: Unit) => Promise<T>,
  ): Promise<{ value: T; unit: Unit }> {
    const unit = new Unit(runner);
    try {
      await runner.startTransaction();
      const value = await unit.finish(within(unit));
      await runner.commitTransaction();
      return { value, unit };
    } catch (error) {
      unit.open = false;
      await unit.undo(error);
      throw error;
    } finally {
      await runner.release();
    }
  }

  /** @throws DatabaseError DATABASE.UNIT_ENDED for work that was left behind and goes on after the end */
  assertOpen(): void {
    if (!this.open) throw databaseError('DATABASE.UNIT_ENDED');
  }

  get manager(): EntityManager {
    this.assertOpen();
    return this.runner.manager;
  }

  /** Does a part of the work that joined this unit. */
  async join<T>(work: () => Promise<T>): Promise<T> {
    this.assertOpen();
    try {
      return await work();
    } catch (error) {
      this.fail(error);
      throw error;
    }
  }

  private fail(error: unknown): void {
    this.failure ??= { error };
  }

  private async finish<T>(work: Promise<T>): Promise<T> {
    const [outcome] = await Promise.allSettled([work]);
    this.open = false;
    if (this.running.size > 0) this.fail(new Error('A statement of the unit of work was not awaited.'));
    await Promise.allSettled(this.running);
    if (this.failure && isConflict(this.failure.error)) throw this.failure.error;
    if (outcome.status === 'rejected') throw outcome.reason;
    if (this.failure) throw this.failure.error;
    return outcome.value;
  }

  private async undo(reason: unknown): Promise<void> {
    try {
      if (this.runner.isTransactionActive) await this.runner.rollbackTransaction();
    } catch (error) {
      // What cannot be undone was undone already, or the connection is gone and the database undoes it by itself.
      if (reason instanceof Error) reason.cause ??= error;
    }
  }
}
