import { randomBytes } from 'node:crypto';
import { commitField, verifyField } from '../../../shared/proof/commit-field.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import type { CounselRequestRow, PrivilegedEntryRow } from './database/aside.row.js';
import type { RecordFault } from './record-fault.js';

interface Committed {
  id: string;
  commitment: string;
  /** Its time to be kept was over: the row is gone. */
  deleted?: true;
}

/** What the log says of notes for counsel: that they are there and what they open to, and nothing of them. */
export interface PrivilegedSection {
  requests?: Committed[];
  entries?: Committed[];
}

type Kind = keyof PrivilegedSection;
type Row = CounselRequestRow | PrivilegedEntryRow;

const SALT_BYTES = 32;

export function newSalt(): string {
  return randomBytes(SALT_BYTES).toString('hex');
}

/** What the log holds of a row, to be added to the section of its incident. */
export function committedTo(kind: Kind, row: Row): Committed {
  const { salt, ...content } = row;
  const value: JsonObject = { ...content };
  return { id: row.id, commitment: commitField(pathOf(kind, row.id), { salt: salt ?? '', value }) };
}

/** A request or an entry as it stands in the database, with its incident. */
export interface PrivilegedRow {
  readonly kind: Kind;
  readonly incidentId: string;
  readonly row: Row;
}

/** Notes that are not those that were written, and notes that are gone or that nobody wrote, each by its incident. */
export function findPrivilegedFaults(
  sections: ReadonlyMap<string, PrivilegedSection>,
  rows: readonly PrivilegedRow[],
  nameOf: (incidentId: string) => string,
): RecordFault[] {
  const there = new Map(rows.map((one) => [pathOf(one.kind, one.row.id), one]));
  const explained = new Set<string>();
  const faults = [...sections].flatMap(([incidentId, section]) =>
    (['requests', 'entries'] as const).flatMap((kind) =>
      (section[kind] ?? []).flatMap(({ id, commitment, deleted }): RecordFault[] => {
        const path = pathOf(kind, id);
        explained.add(path);
        const found = there.get(path);
        const what = `${WORDS[kind]} ${id} of ${nameOf(incidentId)}`;
        if (deleted === true)
          return found === undefined
            ? []
            : [{ code: 'privileged-not-deleted', text: `${what} was deleted, and is still there.` }];
        if (found === undefined) return [{ code: 'privileged-missing', text: `${what} is gone.` }];
        return found.incidentId === incidentId && opens(commitment, path, found.row)
          ? []
          : [{ code: 'privileged-changed', text: `${what} is not the one that was written.` }];
      }),
    ),
  );
  const unexplained = [...there].filter(([path]) => !explained.has(path));
  return [
    ...faults,
    ...unexplained.map(([, { kind, incidentId, row }]): RecordFault => ({
      code: 'privileged-unexplained',
      text: `${WORDS[kind]} ${row.id} of ${nameOf(incidentId)} is not in the log.`,
    })),
  ];
}

const WORDS: Readonly<Record<Kind, string>> = {
  requests: "Counsel's request",
  entries: 'Note for counsel',
};

function opens(commitment: string, path: string, { salt, ...content }: Row): boolean {
  return verifyField(commitment, path, { salt: salt ?? '', value: { ...content } });
}

function pathOf(kind: Kind, id: string): string {
  return `/${kind}/${id}`;
}
