import { restoreBackupTo } from '../server/backup/backup.api.js';
import { runCopying } from './run-copying.js';

/**
 * `npm run -s restore -- COPY` puts a copy that `backup` made where DATABASE_URL, RECORD_HEADS_FILE and EVIDENCE_FOLDER
 * say. Exit status 0 when what is there now is sound, 1 when it is not, 2 when nothing was changed.
 */
runCopying(
  'npm run -s restore -- COPY   puts a copy of the desk in place, where there is none',
  async (copy, tell) => ({
    check: await restoreBackupTo(process.env, copy, tell),
    done: `Restored from ${copy}`,
  }),
);
