import { nameFilter } from './name-filter.js';
import type { RegisterExportDto } from '../../../shared/wire/register-queries.dto.js';
import type { RegisterRepository } from './database/register.repository.js';
import { SHEETS } from './export-columns.js';
import { readRegister, type ReadIncident } from './read-register.js';
import { writeCsv } from './write-csv.js';
import { writeWorkbook } from './write-workbook.js';

/** How far an export has come, in incidents read; a workbook reads them once for each sheet. */
export interface ExportProgress {
  readonly done: number;
  readonly total: number;
}

export interface ExportContext {
  readonly register: RegisterRepository;
  /** The moment for which the register is shown (RFC 3339, UTC). */
  readonly now: string;
  /** IANA zone of the business. */
  readonly timeZone: string;
  readonly progress: (progress: ExportProgress) => void;
}

/**
 * Writes the register to a file.
 * @throws Error when the file cannot be written
 */
export async function exportRegister(
  file: string,
  { format, subject = 'incidents', ...filter }: RegisterExportDto,
  { register, now, timeZone, progress }: ExportContext,
): Promise<void> {
  const sheets = format === 'xlsx' ? SHEETS : SHEETS.filter((sheet) => sheet.subject === subject);
  const total = (await register.count(filter, now)) * sheets.length;
  let done = 0;
  progress({ done, total });
  async function* read(): AsyncGenerator<ReadIncident[]> {
    for await (const part of readRegister(register, filter, now)) {
      yield part;
      done += part.length;
      // Incidents that were opened meanwhile come first and are not read; those that were changed may be.
      progress({ done: Math.min(done, total), total });
    }
  }
  const [only] = sheets;
  if (format === 'csv' && only !== undefined) await writeCsv(file, only, read);
  else await writeWorkbook(file, sheets, read, timeZone, aboutWords(filter, now, timeZone));
}

function aboutWords(filter: Parameters<typeof nameFilter>[0], now: string, timeZone: string): string[] {
  return [
    `Register of incidents as of ${now}.`,
    `Times are those of ${timeZone}.`,
    nameFilter(filter),
    'Not legal advice: confirm with the state agency and with counsel before you decide that nothing is due.',
    'Assume that the other side will read this.',
  ];
}
