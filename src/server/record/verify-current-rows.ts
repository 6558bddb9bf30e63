import { findChanges } from '../../../shared/record/find-changes.js';
import { sameJson, type JsonObject, type JsonValue } from '../../../shared/record/json-value.js';
import { replayAmendments, type PastSection } from '../../../shared/record/replay-amendments.js';
import type { AmendmentRow } from './database/amendment.row.js';
import type { IncidentRow, SectionRow, SummaryParts } from './database/incident.row.js';
import { pastOf } from './history.service.js';
import type { RecordFault } from './record-fault.js';
import { HEAD_SECTION, headOf } from './incident-head.js';
import { summaryPart, wordsOf } from './section-writer.js';

/** The current rows that are not what the amendments make, each by the name of its incident and what differs. */
export function findRowFaults(
  amendments: readonly AmendmentRow[],
  incidents: readonly IncidentRow[],
  sections: readonly SectionRow[],
): RecordFault[] {
  const byIncident = groupBy(amendments, ({ incidentId }) => incidentId);
  const sectionsOf = groupBy(sections, ({ incidentId }) => incidentId);
  const rows = new Map(incidents.map((row) => [row.id, row]));
  const ids = new Set([...byIncident.keys(), ...rows.keys()]);
  return [...ids].flatMap((id) => {
    const [past, row] = [byIncident.get(id), rows.get(id)];
    if (past === undefined)
      return [fault('incident-unexplained', `Incident ${row?.reference ?? id} has no amendments.`)];
    const replayed = replayAmendments(past.map(pastOf));
    const name = headOf(replayed.get(HEAD_SECTION)?.document ?? {}).reference ?? id;
    return [
      ...(row === undefined
        ? [fault('incident-missing', `Incident ${name} is gone; its amendments are there.`)]
        : incidentFaults(row, name, past, replayed)),
      ...sectionFaults(name, replayed, sectionsOf.get(id) ?? []),
    ];
  });
}

function incidentFaults(
  row: IncidentRow,
  name: string,
  past: readonly AmendmentRow[],
  replayed: ReadonlyMap<string, PastSection>,
): RecordFault[] {
  const { reference, openedAt, status } = headOf(replayed.get(HEAD_SECTION)?.document ?? {});
  const summary: SummaryParts = Object.assign(
    {},
    ...[...replayed].map(([section, { document }]) => summaryPart(section, document)),
  ) as SummaryParts;
  const last = past.at(-1);
  const expected: Record<string, unknown> = { reference, openedAt, status, summary, version: past.length };
  Object.assign(expected, { latestAmendment: last?.sequence, updatedAt: last?.madeAt });
  const actual = new Map<string, unknown>(Object.entries(row));
  const differing = Object.keys(expected).filter((member) => !same(expected[member], actual.get(member)));
  return differing.length === 0
    ? []
    : [
        fault(
          'incident-changed',
          `Incident ${name} was changed without an amendment: ${differing.join(', ')}.`,
        ),
      ];
}

function sectionFaults(
  name: string,
  replayed: ReadonlyMap<string, PastSection>,
  rows: readonly SectionRow[],
): RecordFault[] {
  const there = new Map(rows.map((row) => [row.section, row]));
  return [
    ...[...replayed].flatMap(([section, state]) => {
      const row = there.get(section);
      const where = `Section ${section} of ${name}`;
      if (row === undefined) return [fault('section-missing', `${where} is gone; its amendments are there.`)];
      const differing = differences(section, state, row);
      return differing.length === 0
        ? []
        : [fault('section-changed', `${where} was changed without an amendment: ${differing.join(', ')}.`)];
    }),
    ...rows
      .filter(({ section }) => !replayed.has(section))
      .map(({ section }) => fault('section-unexplained', `Section ${section} of ${name} has no amendments.`)),
  ];
}

function differences(section: string, state: PastSection, row: SectionRow): string[] {
  const fields = findChanges(state.document, row.document).map(({ path }) => `at ${path}`);
  const plain = [
    ...(state.version === row.version ? [] : ['version']),
    ...(state.finished === row.finished ? [] : ['finished']),
    ...(state.latestAmendment === row.latestAmendment ? [] : ['latest amendment']),
    ...(fields.length > 0 || wordsOf(section, row.document) === row.words ? [] : ['search words']),
  ];
  return [...fields, ...plain];
}

function same(one: unknown, other: unknown): boolean {
  return sameJson((one ?? null) as JsonValue, (other ?? null) as JsonObject);
}

function fault(code: RecordFault['code'], text: string): RecordFault {
  return { code, text };
}

function groupBy<T>(items: readonly T[], keyOf: (item: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const item of items) {
    const group = groups.get(keyOf(item));
    if (group === undefined) groups.set(keyOf(item), [item]);
    else group.push(item);
  }
  return groups;
}
