import { makeBackupOf } from '../server/backup/backup.api.js';
import { runCopying } from './run-copying.js';

/**
 * `npm run -s backup -- FOLDER` copies the desk, also while the service runs, and checks the copy. Exit status 0 when the
 * copy is sound, 1 with one line a fault when not, 2 when no copy could be made.
 */
runCopying(
  'npm run -s backup -- FOLDER   copies the desk into a new folder in FOLDER',
  async (into, tell) => {
    const made = await makeBackupOf(process.env, into, tell);
    return { check: made, done: `Copied to ${made.folder}` };
  },
);
