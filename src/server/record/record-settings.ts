import { join } from 'node:path';
import type { DatabaseTarget } from '../platform/database/database-target.js';

/** What the record is handed when the service is put together. */
export class RecordSettings {
  constructor(
    /** IANA zone of the business: its year is in the reference, its clock is used until a place is known. */
    readonly timeZone: string,
    /** Where the heads of the log are kept, apart from the database. */
    readonly headsFile: string,
  ) {}
}

/** RECORD_HEADS_FILE, or a file beside the SQLite file, or var/incident-desk.heads in the project's folder. */
export function headsFileOf(named: string | undefined, target: DatabaseTarget, root: string): string {
  if (named !== undefined && named !== '') return named;
  return target.engine === 'sqlite' ? `${target.file}.heads` : join(root, 'var', 'incident-desk.heads');
}
