import { verifyLog } from '../../../shared/proof/verify-log.js';
import type { UnitOfWork } from '../platform/database/unit-of-work.js';
import type { AmendmentRow } from './database/amendment.row.js';
import { AmendmentsRepository } from './database/amendments.repository.js';
import { IncidentsRepository } from './database/incidents.repository.js';
import { LogRepository } from './database/log.repository.js';
import { type KeptHeads, readHeads } from './heads-file.js';
import { logFault, type RecordFault } from './record-fault.js';
import { findAsideFaults } from './verify-aside.js';
import { findRowFaults } from './verify-current-rows.js';
import { entryOf, findContentFaults } from './verify-log-rows.js';

/** What a check of the whole record found. */
export interface RecordCheck {
  readonly incidents: number;
  readonly amendments: number;
  readonly faults: RecordFault[];
}

/**
 * Holds the whole record against its own log and against the heads that were kept outside the database: the log proves
 * itself, its amendments make the current rows, and no end of it is missing. While the service writes, a first look
 * may fall between two states; a fault is believed only if nothing was written meanwhile, or nobody else could write.
 */
export async function verifyRecord(unitOfWork: UnitOfWork, headsFile: string): Promise<RecordCheck> {
  const log = new LogRepository(unitOfWork);
  const before = await log.head();
  const check = await checkOnce(unitOfWork, headsFile);
  const after = await log.head();
  if (check.faults.length === 0 || before?.size === after?.size) return check;
  return unitOfWork.run(async () => {
    await log.lock();
    return checkOnce(unitOfWork, headsFile);
  });
}

async function checkOnce(unitOfWork: UnitOfWork, headsFile: string): Promise<RecordCheck> {
  const incidentRows = new IncidentsRepository(unitOfWork);
  const log = new LogRepository(unitOfWork);
  // Before the log: each head that is read must have its amendments in the database.
  const kept = readHeads(headsFile);
  const amendments: AmendmentRow[] = [];
  for await (const row of new AmendmentsRepository(unitOfWork).all()) amendments.push(row);
  const [incidents, sections] = [await incidentRows.allIncidents(), await incidentRows.sectionsWithWords()];
  const end = await log.head();
  const references = new Map(incidents.map(({ id, reference }) => [id, reference]));
  const bySequence = new Map(amendments.map((row) => [row.sequence, row]));
  const nameOf = (sequence: number): string => {
    const row = bySequence.get(sequence);
    if (row === undefined) return `Amendment ${sequence}`;
    return `Amendment ${sequence} (${row.section} of ${references.get(row.incidentId) ?? row.incidentId})`;
  };
  const heads = end === null ? kept.heads : [...kept.heads, end];
  const entries = amendments.map(entryOf);
  const faults = [
    ...verifyLog(entries, heads).map((fault) => logFault(fault, nameOf)),
    ...headFaults(kept, end, amendments.length),
    ...findContentFaults(amendments, nameOf),
    ...findRowFaults(amendments, incidents, sections),
    ...(await findAsideFaults(unitOfWork, sections, (id) => references.get(id) ?? id)),
  ];
  return { incidents: incidents.length, amendments: amendments.length, faults: withoutTwins(faults) };
}

function headFaults(
  { heads, unreadable }: KeptHeads,
  end: { size: number } | null,
  amendments: number,
): RecordFault[] {
  const faults: RecordFault[] = unreadable.map((line) => ({
    code: 'heads-unreadable',
    text: `Line ${line} of the heads that were kept outside the database is none.`,
  }));
  if (heads.length === 0 && amendments > 0) {
    const text =
      'No heads were kept outside the database: whether its last amendments are there cannot be told.';
    faults.push({ code: 'heads-missing', text });
  }
  if ((end?.size ?? 0) < amendments) {
    const text = `The log says that it has ${end?.size ?? 0} amendments, and there are ${amendments}.`;
    faults.push({ code: 'log-end-changed', text });
  }
  return faults;
}

/** Many heads may tell of the same missing end. */
function withoutTwins(faults: readonly RecordFault[]): RecordFault[] {
  return [...new Map(faults.map((fault) => [fault.text, fault])).values()];
}
