import sqlite3 from 'sqlite3';

export const OPEN_WRITER = sqlite3.OPEN_READWRITE | sqlite3.OPEN_CREATE | sqlite3.OPEN_FULLMUTEX;
export const OPEN_READER = sqlite3.OPEN_READONLY | sqlite3.OPEN_FULLMUTEX;

/**
 * FULL: an acknowledged write is on the disk, whatever happens to the power. secure_delete: what is withdrawn from the
 * record leaves the file too and does not linger in its free pages.
 */
const PRAGMAS = 'PRAGMA synchronous = FULL; PRAGMA secure_delete = ON; PRAGMA temp_store = MEMORY;';

type Callback = (error: Error | null) => void;

/** A connection that begins every transaction as the writer it is going to be. */
class Connection extends sqlite3.Database {
  constructor(file: string, mode: number, opened: Callback) {
    super(file, mode, (error) => {
      if (error) opened(error);
      else this.exec(PRAGMAS, opened);
    });
    // One statement of the reader at a time: the others would wait for its lock, each holding one of the few threads
    // that the writer, the files and the password hashes need as well. The writer has one unit of work at a time.
    if (mode === OPEN_READER) this.serialize();
  }

  /**
   * A deferred BEGIN that first reads and then writes is refused at once (SQLITE_BUSY, whatever the time-out) when
   * another process, such as a restore, has written in between. IMMEDIATE waits for the lock at the start instead.
   */
  override all(sql: string, ...rest: never[]): this {
    return super.all(sql === 'BEGIN TRANSACTION' ? 'BEGIN IMMEDIATE' : sql, ...rest);
  }
}

/** What TypeORM takes for the sqlite3 package. Its verbose mode, which costs a stack trace a call, stays off. */
export const sqliteDriver = {
  Database: Connection,
  OPEN_URI: sqlite3.OPEN_URI,
  verbose: (): unknown => sqliteDriver,
};
