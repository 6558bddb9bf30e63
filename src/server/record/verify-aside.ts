import { assignedAccounts } from '../../../shared/record/assignments-section.js';
import type { UnitOfWork } from '../platform/database/unit-of-work.js';
import { findPrivilegedFaults, type PrivilegedRow } from './commit-privileged.js';
import { AssignmentsRepository } from './database/assignments.repository.js';
import type { SectionRow } from './database/incident.row.js';
import { PrivilegedRepository } from './database/privileged.repository.js';
import type { RecordFault } from './record-fault.js';
import type { ServiceSection } from './service-sections.js';

/** What stands beside the sections: notes for counsel and who reads them, held against what the sections say. */
export async function findAsideFaults(
  unitOfWork: UnitOfWork,
  sections: readonly SectionRow[],
  nameOf: (incidentId: string) => string,
): Promise<RecordFault[]> {
  const documents = (name: ServiceSection) =>
    new Map(sections.filter(({ section }) => section === name).map((row) => [row.incidentId, row.document]));
  const said = new Set(
    [...documents('assignments')].flatMap(([incidentId, document]) =>
      assignedAccounts(document).map((account) => JSON.stringify([incidentId, account])),
    ),
  );
  const rows = await new AssignmentsRepository(unitOfWork).all();
  const assigned = new Set(rows.map(({ incidentId, accountId }) => JSON.stringify([incidentId, accountId])));
  const differing = [
    ...[...said].filter((one) => !assigned.has(one)),
    ...[...assigned].filter((one) => !said.has(one)),
  ];
  return [
    ...findPrivilegedFaults(documents('privileged'), await privilegedRows(unitOfWork), nameOf),
    ...differing.map((one): RecordFault => {
      const [incidentId = '', account = ''] = JSON.parse(one) as string[];
      const text = `Who reads ${nameOf(incidentId)} was changed without an amendment: account ${account}.`;
      return { code: 'assignment-changed', text };
    }),
  ];
}

async function privilegedRows(unitOfWork: UnitOfWork): Promise<PrivilegedRow[]> {
  const privileged = new PrivilegedRepository(unitOfWork);
  const requests = await privileged.allRequests();
  const incidentOf = new Map(requests.map(({ id, incidentId }) => [id, incidentId]));
  return [
    ...requests.map((row) => ({ kind: 'requests' as const, incidentId: row.incidentId, row })),
    ...(await privileged.allEntries()).map((row) => ({
      kind: 'entries' as const,
      incidentId: incidentOf.get(row.requestId) ?? '',
      row,
    })),
  ];
}
