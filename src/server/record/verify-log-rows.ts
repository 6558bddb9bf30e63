import type { LogEntry, ShownValue } from '../../../shared/proof/verify-amendment.js';
import { ASIDE, reasonOf } from '../../../shared/record/replay-amendments.js';
import type { AmendmentRow } from './database/amendment.row.js';
import { asideOf } from './history.service.js';
import type { RecordFault } from './record-fault.js';

/** A row as the proof reads it. */
export function entryOf(row: AmendmentRow): LogEntry {
  const { sequence, incidentId, section, who, device, madeAt, changes, openings, reasonCommitment } = row;
  const header = { sequence, incidentId, who, device, when: madeAt, section, reason: reasonCommitment };
  const shown: ShownValue[] = row.reasonOpening === null ? [] : [{ of: 'reason', ...row.reasonOpening }];
  for (const [index, { path }] of changes.entries()) {
    const { from = null, to = null } = openings[index] ?? {};
    if (from !== null) shown.push({ of: 'from', path, ...from });
    if (to !== null) shown.push({ of: 'to', path, ...to });
  }
  return { amendment: { header, fields: changes }, leafHash: row.leafHash, shown };
}

/**
 * Content that is gone although no amendment withdraws it, and content that is there although one does. A withdrawal
 * names its paths in a leaf of the log, so nobody can pass a deletion off as one.
 */
export function findContentFaults(
  rows: readonly AmendmentRow[],
  nameOf: (sequence: number) => string,
): RecordFault[] {
  const withdrawnAt = new Map<string, number>();
  for (const row of rows)
    for (const path of withdrawnPaths(row)) withdrawnAt.set(keyOf(row, path), row.sequence);
  return rows.flatMap((row) => [
    ...row.changes.flatMap(({ path }, index): RecordFault[] => {
      const opening = row.openings[index];
      const lastWithdrawn = withdrawnAt.get(keyOf(row, path)) ?? 0;
      const sides = [opening?.from ?? null, opening?.to ?? null];
      const where = `${nameOf(row.sequence)} at ${path}`;
      if (sides.includes(null) && lastWithdrawn < row.sequence) {
        return [{ code: 'content-removed', text: `${where}: content is gone, and nobody withdrew it.` }];
      }
      const still =
        lastWithdrawn >= row.sequence && sides.some((side) => side !== null && side.value !== null);
      return still ? [{ code: 'withdrawn-still-there', text: `${where}: what was withdrawn is back.` }] : [];
    }),
    ...reasonFaults(row, withdrawnAt.has(keyOf(row, reasonOf(row.sequence))), nameOf),
  ]);
}

function reasonFaults(
  { sequence, reasonCommitment, reasonOpening }: AmendmentRow,
  isWithdrawn: boolean,
  nameOf: (sequence: number) => string,
): RecordFault[] {
  if (reasonCommitment === null || (reasonOpening === null) === isWithdrawn) return [];
  return reasonOpening === null
    ? [{ code: 'content-removed', text: `${nameOf(sequence)}: the reason is gone, and nobody withdrew it.` }]
    : [
        {
          code: 'withdrawn-still-there',
          text: `${nameOf(sequence)}: the reason that was withdrawn is back.`,
        },
      ];
}

function withdrawnPaths(row: AmendmentRow): string[] {
  const paths = asideOf(row, ASIDE.withdrawn);
  return Array.isArray(paths) ? paths.map(String) : [];
}

function keyOf({ incidentId, section }: AmendmentRow, path: string): string {
  return JSON.stringify([incidentId, section, path]);
}
