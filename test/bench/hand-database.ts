import sqlite3 from 'sqlite3';

/** A SQLite file as somebody opens it who writes everything by hand, as durable as the service's. */
export class HandDatabase {
  private constructor(private readonly database: sqlite3.Database) {}

  static open(file: string): Promise<HandDatabase> {
    return new Promise((resolve, reject) => {
      const database: sqlite3.Database = new sqlite3.Database(file, (error) => {
        if (error !== null) reject(error);
        else
          database.exec(SETTINGS, (refused) =>
            refused ? reject(refused) : resolve(new HandDatabase(database)),
          );
      });
    });
  }

  all<Row>(sql: string, parameters: readonly unknown[] = []): Promise<Row[]> {
    return new Promise((resolve, reject) => {
      this.database.all<Row>(sql, parameters, (error, rows) =>
        error === null ? resolve(rows) : reject(error),
      );
    });
  }

  close(): Promise<void> {
    return new Promise((done) => this.database.close(() => done()));
  }
}

const SETTINGS = [
  'PRAGMA journal_mode = WAL',
  'PRAGMA synchronous = FULL',
  'PRAGMA secure_delete = ON',
  'PRAGMA foreign_keys = ON;',
].join('; ');
