import { readDatabaseTarget } from '../platform/database/database-target.js';
import { openDatabase } from '../platform/database/open-database.js';
import { evidenceFolderOf } from '../platform/evidence-config.js';
import { projectRoot } from '../platform/project-root.js';
import { FolderStore } from '../platform/storage/folder-store.js';
import { type EvidenceCheck, verifyEvidence } from './check-evidence.js';
import { EVIDENCE_ROWS } from './database/evidence-rows.js';

export type { EvidenceCheck, EvidenceFault } from './check-evidence.js';
export { EVIDENCE_ROWS };
export { EvidenceDeletion } from './evidence-deletion.js';
export { EvidenceSettings } from './evidence-settings.js';
export { wholeStream } from './whole-stream.js';

/**
 * Checks the evidence that the environment names: DATABASE_URL and EVIDENCE_FOLDER, as the service reads them.
 * @throws DatabaseUnavailableError; Error when DATABASE_URL is no address of a database
 */
export async function checkEvidence(environment: Record<string, string | undefined>): Promise<EvidenceCheck> {
  const root = projectRoot();
  const target = readDatabaseTarget(environment['DATABASE_URL'], root);
  if (target === undefined) throw new Error('DATABASE_URL must be sqlite:FILE or postgres://…');
  // No row is mapped: the check asks for sections of the record alone, in plain SQL.
  const database = await openDatabase(target, [], { report: () => undefined });
  try {
    const store = new FolderStore(evidenceFolderOf(environment['EVIDENCE_FOLDER'], target, root));
    return await verifyEvidence(database.unitOfWork, store);
  } finally {
    await database.close();
  }
}
