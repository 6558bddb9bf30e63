import { AsyncLocalStorage } from 'node:async_hooks';
import type { DataSource, EntityManager } from 'typeorm';
import { isConflict } from './database-errors.js';
import type { TurnQueue } from './turn-queue.js';
import { Unit } from './unit.js';

/** A unit that lost to others is done again at most this often; each time but the first it has the house to itself. */
const ATTEMPTS = 8;

export interface UnitOfWorkParts {
  writer: DataSource;
  reader: DataSource;
  turns: TurnQueue;
  /** Told what an effect threw. */
  report: (error: unknown) => void;
}

/**
 * The one door to the database. Whatever is written is written inside `run`; whatever is read outside of it comes from
 * a connection that sees committed rows and refuses to write.
 *
 * Never await the network, a file or a person inside `run`: on SQLite everyone else stands in line behind it. A unit
 * may be done more than once (PostgreSQL refuses what another unit overtook), so it changes nothing but the database;
 * the rest belongs into `afterCommit`.
 */
export class UnitOfWork {
  private readonly current = new AsyncLocalStorage<Unit>();

  constructor(private readonly parts: UnitOfWorkParts) {}

  /** For repositories: of the unit of work that runs now, or of the reading connection when none does. */
  get manager(): EntityManager {
    return this.current.getStore()?.manager ?? this.parts.reader.manager;
  }

  /**
   * Does the work as a whole or not at all, in its turn; inside another unit it becomes a part of that one.
   * @throws DatabaseError DATABASE.BUSY when the turn did not come in time, DATABASE.CONFLICT when it lost each time
   */
  async run<T>(work: () => Promise<T>): Promise<T> {
    const outer = this.current.getStore();
    if (outer) return outer.join(work);
    const { value, unit } = await this.attempt(work);
    await this.fire(unit.effects);
    return value;
  }

  /** Has the effect done once the unit of work that runs now is committed, and never if it is not. */
  afterCommit(effect: () => unknown): void {
    const unit = this.current.getStore();
    if (!unit) throw new Error('afterCommit belongs inside UnitOfWork.run: there is no commit to wait for.');
    unit.assertOpen();
    unit.effects.push(effect);
  }

  /**
   * Takes what was deleted out of the engine's own log as well, outside any unit of work. SQLite keeps the pages of before
   * in its write-ahead log until that begins anew; `secure_delete` has cleared the database file itself. On PostgreSQL
   * the server's own VACUUM does it in its time.
   * @throws Error while somebody else reads what the log holds
   */
  async purge(): Promise<void> {
    const { turns, writer } = this.parts;
    if (writer.options.type !== 'sqlite') return;
    await turns.hold(1, async () => {
      const [row] = await writer.query<{ busy: number }[]>('PRAGMA wal_checkpoint(TRUNCATE)');
      if (row?.busy !== 0) throw new Error('What was deleted still stands in the log of the database.');
    });
  }

  private async attempt<T>(work: () => Promise<T>): Promise<{ value: T; unit: Unit }> {
    const { turns, writer } = this.parts;
    const once = () => Unit.run(writer.createQueryRunner(), (unit) => this.current.run(unit, work));
    for (let attempt = 1; ; attempt += 1) {
      try {
        return await turns.hold(attempt === 1 ? 1 : turns.places, once);
      } catch (error) {
        if (!isConflict(error) || attempt === ATTEMPTS) throw error;
      }
    }
  }

  private async fire(effects: readonly (() => unknown)[]): Promise<void> {
    for (const effect of effects) {
      try {
        await effect();
      } catch (error) {
        this.parts.report(error);
      }
    }
  }
}
