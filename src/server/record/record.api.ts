import type { DatabaseTarget } from '../platform/database/database-target.js';
import { readDatabaseTarget } from '../platform/database/database-target.js';
import { openDatabase } from '../platform/database/open-database.js';
import { projectRoot } from '../platform/project-root.js';
import { RECORD_ROWS } from './database/record-rows.js';
import { headsFileOf } from './record-settings.js';
import { type RecordCheck, verifyRecord } from './verify-record.js';

export type { RecordCheck } from './verify-record.js';
export type { RecordFault } from './record-fault.js';
export { headsFileOf, RecordSettings } from './record-settings.js';
export { RECORD_ROWS };
export { type IncidentContents, RecordContents } from './record-contents.js';
export { RecordDeletion } from './record-deletion.js';
export { type RecordChange, RecordChanges } from './record-changes.js';
export { type ServiceSection, ServiceSections } from './service-sections.js';
export { type DeletionStop, DeletionStops, type DeletionTarget, type StopFinder } from './deletion-stops.js';
export { type HoldListener, Holds, type StartedHold } from './holds.js';
export { assertRole, IncidentAccess } from './incident-access.js';
export { type IncidentLine, type IncidentOutline, outlineOf } from './incident-views.js';
export { type IncidentProof, IncidentProofs } from './incident-proofs.js';
export { PrivilegedService } from './privileged.service.js';
export { HistoryService } from './history.service.js';
export { IncidentsService } from './incidents.service.js';
export { SectionsService } from './sections.service.js';

/**
 * Checks the record that the environment names: DATABASE_URL and RECORD_HEADS_FILE, as the service reads them.
 * @throws DatabaseUnavailableError; Error when DATABASE_URL is no address of a database
 */
export async function checkRecord(environment: Record<string, string | undefined>): Promise<RecordCheck> {
  const root = projectRoot();
  const target = readDatabaseTarget(environment['DATABASE_URL'], root);
  if (target === undefined) throw new Error('DATABASE_URL must be sqlite:FILE or postgres://…');
  return checkAt(target, headsFileOf(environment['RECORD_HEADS_FILE'], target, root));
}

async function checkAt(target: DatabaseTarget, headsFile: string): Promise<RecordCheck> {
  const database = await openDatabase(target, RECORD_ROWS, { report: () => undefined });
  try {
    return await verifyRecord(database.unitOfWork, headsFile);
  } finally {
    await database.close();
  }
}
