import { open } from 'node:fs/promises';
import sqlite3 from 'sqlite3';

/**
 * Copies a SQLite database as it stands at one moment into a file that does not exist yet, while others may write to it.
 * @throws Error with SQLite's own words when the database cannot be read or the copy cannot be written
 */
export async function copyDatabase(file: string, copy: string): Promise<void> {
  const database = await new Promise<sqlite3.Database>((resolve, reject) => {
    const opened: sqlite3.Database = new sqlite3.Database(file, sqlite3.OPEN_READONLY, (error) =>
      error ? reject(error) : resolve(opened),
    );
  });
  try {
    await new Promise<void>((resolve, reject) => {
      database.run('VACUUM INTO ?', copy, (error: Error | null) => (error ? reject(error) : resolve()));
    });
  } finally {
    await new Promise<void>((resolve) => database.close(() => resolve()));
  }
  const written = await open(copy, 'r+');
  // It has the record in it: nobody else on the machine may read it.
  await written.chmod(0o600);
  await written.sync();
  await written.close();
}
