import {
  type HistoryGroup,
  type PeopleCount,
  totalOf,
} from '../../../../shared/patterns/incident-history.js';
import { inOrder } from '../../../../shared/report/tell-value.js';
import { tellDay } from '../../../../shared/time/tell-time.js';
import type { IncidentHistory } from './history.service.js';

/** A table of the history for workbook and paper; money is told as bounds, since a figure may be a range. */
export interface HistoryTable {
  readonly title: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number | null)[])[];
}

const COLUMNS = [
  'Incidents',
  'Hurt',
  'Died',
  'Missing',
  'Not known',
  'Incidents with nobody listed',
  'Damage from, US dollars',
  'Damage to, US dollars',
  'Damage without a figure',
  'Paid, US dollars',
];

/** The grouping in which each incident stands once, and which ends with the sum. */
export const SUMMED = 'By month';

/** Said with every history, wherever it goes. */
export function historyNotes({ from, until, outings }: IncidentHistory): string[] {
  return [
    `Incidents that happened from ${tellDay(from)} to ${tellDay(until)}, both days within it, by the calendar of the place. No names of people.`,
    outings === null
      ? 'Outings of the period: none was entered here, so no rate can be told.'
      : `Outings of the period that were entered here: ${outings}. Whether all of them were entered, nobody can tell from this.`,
    'An incident with several craft or stations counts under each, so that groups may add up to more than the whole.',
    'Damage is what was entered, of everybody’s property; what has no figure is counted beside it and is no zero. Paid is the insurer’s own total; where nobody entered one it says so or stays empty, and is no zero.',
    'People of whom nobody has told are counted as not known, and incidents in which nobody is listed stand in a column of their own: neither is a no.',
  ];
}

/** `tellMonth('2026-10')` is `'October 2026'`. */
const tellMonth = (month: string): string => tellDay(`${month}-01`).replace(/^1 /, '');

export function historyTables(history: IncidentHistory): HistoryTable[] {
  const { total, byMonth, byCraft, byStation, byType } = history;
  return [
    groupTable(SUMMED, 'Month', [
      ...byMonth.map((month) => ({ ...month, name: tellMonth(month.name) })),
      total,
    ]),
    groupTable('By craft', 'Craft', byCraft),
    groupTable('By station', 'Station', byStation),
    groupTable('By type', 'First event', byType),
  ];
}

export function linesTable({ lines }: IncidentHistory): HistoryTable {
  return {
    title: 'Incidents',
    columns: ['Incident', 'Day', 'Events', 'Craft', 'Stations', ...COLUMNS.slice(1)],
    rows: lines.map(({ reference, day, types, craft, stations, ...sums }) => [
      reference,
      day,
      inOrder(types),
      craft.join(', '),
      stations.join(', '),
      ...figures(totalOf('', [{ reference, day, types, craft, stations, ...sums }])).slice(1),
    ]),
  };
}

function groupTable(title: string, heading: string, groups: readonly HistoryGroup[]): HistoryTable {
  return {
    title,
    columns: [heading, ...COLUMNS],
    rows: groups.map((group) => [group.name, ...figures(group)]),
  };
}

function figures({ incidents, people, unlisted, damage, paid }: HistoryGroup): (number | null)[] {
  const { hurt, died, missing, unknown }: PeopleCount = people;
  return [
    incidents,
    hurt,
    died,
    missing,
    unknown,
    unlisted,
    damage.low,
    damage.high,
    damage.unknown,
    paid?.high ?? null,
  ];
}
