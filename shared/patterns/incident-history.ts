import type { PersonOutcome } from '../record/incident-facts.js';
import { type IncidentRecord } from '../record/incident-record.js';
import { localDayOf } from '../record/when-it-happened.js';
import { type AmountSum, amountsOf, sumAmounts } from '../report/sum-amounts.js';

/** What became of people, counted; whoever nobody has told of is counted as not known and never as unhurt. */
export interface PeopleCount {
  readonly hurt: number;
  readonly died: number;
  readonly missing: number;
  readonly unhurt: number;
  readonly unknown: number;
}

/** One incident as an underwriter is told of it: no names. */
export interface HistoryLine {
  readonly reference: string;
  /** Day of the calendar at the place. */
  readonly day: string;
  /** Slugs, first event first; none while nobody has said. */
  readonly types: readonly string[];
  readonly craft: readonly string[];
  readonly stations: readonly string[];
  readonly people: PeopleCount;
  /** US dollars. */
  readonly damage: AmountSum;
  /** The insurer’s own totals, where somebody entered one. */
  readonly paid: AmountSum | null;
}

export interface HistoryGroup {
  readonly name: string;
  readonly incidents: number;
  readonly people: PeopleCount;
  /** Incidents of which nobody is listed: there nothing is known of people at all. */
  readonly unlisted: number;
  readonly damage: AmountSum;
  readonly paid: AmountSum | null;
}

const NOBODY: PeopleCount = { hurt: 0, died: 0, missing: 0, unhurt: 0, unknown: 0 };

/** @param stations of our craft in the incident, each once */
export function historyLine(record: IncidentRecord, stations: readonly string[]): HistoryLine {
  const { account, craft, people, damage } = record.sections;
  const totals = (damage?.money ?? []).filter(({ kind }) => kind === 'insurer-total');
  return {
    reference: record.incident.reference,
    day: localDayOf(record),
    types: account?.casualtyTypes?.value ?? [],
    craft: (craft?.craft ?? []).filter(({ ours }) => ours === true).map(({ name, id }) => name ?? id),
    stations,
    people: countPeople((people?.people ?? []).map(({ outcome }) => outcome?.value)),
    damage: sumAmounts((damage?.lines ?? []).flatMap(amountsOf)),
    paid: totals.length === 0 ? null : sumAmounts(totals.map(({ amount }) => amount)),
  };
}

/**
 * Incidents by one thing that they have. One with two craft counts under both, so that groups may add up to more than
 * the whole; one that has none stands under `none`.
 * @example groupHistory(lines, ({ craft }) => craft, 'No craft named')[0] // { name: 'PWC 3', incidents: 2, … }
 */
export function groupHistory(
  lines: readonly HistoryLine[],
  namesOf: (line: HistoryLine) => readonly string[],
  none: string,
): HistoryGroup[] {
  const groups = new Map<string, HistoryLine[]>();
  for (const line of lines) {
    const names = new Set(namesOf(line));
    for (const name of names.size === 0 ? [none] : names)
      groups.set(name, [...(groups.get(name) ?? []), line]);
  }
  return [...groups]
    .map(([name, own]) => totalOf(name, own))
    .sort((one, other) => other.incidents - one.incidents || one.name.localeCompare(other.name, 'en'));
}

export function totalOf(name: string, lines: readonly HistoryLine[]): HistoryGroup {
  const paid = lines.flatMap((line) => line.paid ?? []);
  return {
    name,
    incidents: lines.length,
    people: lines.reduce((sum, { people }) => addPeople(sum, people), NOBODY),
    unlisted: lines.filter(({ people }) => Object.values(people).every((count) => count === 0)).length,
    damage: addSums(lines.map(({ damage }) => damage)),
    paid: paid.length === 0 ? null : addSums(paid),
  };
}

function countPeople(outcomes: readonly (PersonOutcome | undefined)[]): PeopleCount {
  const count = (...of: readonly (PersonOutcome | undefined)[]): number =>
    outcomes.filter((outcome) => of.includes(outcome)).length;
  return {
    hurt: count('injured'),
    died: count('died'),
    missing: count('missing', 'not-back'),
    unhurt: count('unhurt'),
    unknown: count('unknown', undefined),
  };
}

function addPeople(one: PeopleCount, other: PeopleCount): PeopleCount {
  return {
    hurt: one.hurt + other.hurt,
    died: one.died + other.died,
    missing: one.missing + other.missing,
    unhurt: one.unhurt + other.unhurt,
    unknown: one.unknown + other.unknown,
  };
}

/** In cents, as a thousand sums of dollars would drift. */
function addSums(sums: readonly AmountSum[]): AmountSum {
  const add = (of: (sum: AmountSum) => number): number =>
    sums.reduce((total, sum) => total + Math.round(of(sum) * 100), 0) / 100;
  return {
    low: add(({ low }) => low),
    high: add(({ high }) => high),
    unknown: sums.reduce((total, { unknown }) => total + unknown, 0),
  };
}
