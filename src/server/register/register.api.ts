import type { RegisterExportDto } from '../../../shared/wire/register-queries.dto.js';
import { readDatabaseTarget } from '../platform/database/database-target.js';
import { openDatabase } from '../platform/database/open-database.js';
import { projectRoot } from '../platform/project-root.js';
import { RegisterRepository } from './database/register.repository.js';
import { type ExportProgress, exportRegister } from './export-register.js';

export type { ExportProgress } from './export-register.js';

/**
 * Writes the register of the database that the environment names to a file, with times of BUSINESS_TIME_ZONE.
 * @throws DatabaseUnavailableError; Error when DATABASE_URL is no address of a database or the file cannot be written
 */
export async function exportRegisterOf(
  environment: Record<string, string | undefined>,
  file: string,
  asked: RegisterExportDto,
  progress: (progress: ExportProgress) => void,
): Promise<void> {
  const target = readDatabaseTarget(environment['DATABASE_URL'], projectRoot());
  if (target === undefined) throw new Error('DATABASE_URL must be sqlite:FILE or postgres://…');
  const database = await openDatabase(target, [], { report: () => undefined });
  try {
    await exportRegister(file, asked, {
      register: new RegisterRepository(database.unitOfWork),
      now: new Date().toISOString(),
      timeZone: environment['BUSINESS_TIME_ZONE'] ?? Intl.DateTimeFormat().resolvedOptions().timeZone,
      progress,
    });
  } finally {
    await database.close();
  }
}
