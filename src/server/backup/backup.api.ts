import { randomUUID } from 'node:crypto';
import { openDatabase } from '../platform/database/open-database.js';
import type { CopyCheck } from './check-copy.js';
import { BACKUP_ROWS, CheckedBackupsRepository } from './database/checked-backups.repository.js';
import { deskFiles, type Environment } from './desk-files.js';
import { type MadeBackup, makeBackup } from './make-backup.js';
import { restoreBackup } from './restore-backup.js';

export { BACKUP_ROWS };
export type { CopyCheck, MadeBackup };

/**
 * Copies the desk that the environment names into a new folder in `into`, and writes down in the desk that it was
 * copied and what the check of the copy found.
 * @throws Error on PostgreSQL, or when something cannot be read or written; DatabaseUnavailableError
 */
export async function makeBackupOf(
  environment: Environment,
  into: string,
  tell: (words: string) => void,
): Promise<MadeBackup> {
  const desk = deskFiles(environment);
  const database = await openDatabase({ engine: 'sqlite', file: desk.database }, BACKUP_ROWS, {
    report: () => undefined,
  });
  try {
    const made = await makeBackup(desk, into, { now: new Date().toISOString(), tell });
    await database.unitOfWork.run(() =>
      new CheckedBackupsRepository(database.unitOfWork).add({
        id: randomUUID(),
        madeAt: made.at,
        folder: made.folder,
        incidents: made.incidents,
        amendments: made.amendments,
        files: made.files,
        faults: made.faults.length,
      }),
    );
    return made;
  } finally {
    await database.close();
  }
}

/**
 * Puts a copy where the environment says that the desk is to be.
 * @throws Error when the copy is not sound or a desk is there already: then nothing was changed
 */
export function restoreBackupTo(
  environment: Environment,
  folder: string,
  tell: (words: string) => void,
): Promise<CopyCheck> {
  return restoreBackup(folder, deskFiles(environment), tell);
}
