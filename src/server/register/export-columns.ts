import type { Filing } from '../../../shared/decision/filing.js';
import { nameJurisdiction, nameKind, OUTCOME_WORDS } from '../../../shared/determination/duty-words.js';
import type { ExportSubject } from '../../../shared/wire/register-queries.dto.js';
import type { RegisterDuty, RegisterLine, RegisterTask } from './register-rows.js';

/** What stands in a cell. An instant is told by its type, so that it becomes a real date and no text. */
export type Cell = string | number | boolean | { readonly instant: string } | null;

export interface Column<Row> {
  readonly header: string;
  /** In characters. */
  readonly width: number;
  readonly cell: (row: Row) => Cell;
}

export interface OfIncident<T> {
  readonly incident: RegisterLine;
  readonly of: T;
}

const instant = (value: string | null = null): Cell => (value === null ? null : { instant: value });
const list = (words: readonly string[] | undefined): string | null => words?.join(', ') ?? null;

/** `us-tx/accident-report` as people say it: Texas, Accident report. */
function dutyWords(duty: string): string {
  const [jurisdiction = '', kind = ''] = duty.split('/');
  return `${nameJurisdiction(jurisdiction)}: ${nameKind(kind)}`;
}

function stateWords({ settled, filed, overdue, supplementDue }: RegisterDuty): string {
  if (supplementDue) return 'supplement the filed report';
  if (filed) return 'filed';
  if (settled) return 'settled';
  return overdue ? 'overdue' : 'open';
}

const INCIDENTS: Column<RegisterLine>[] = [
  { header: 'Reference', width: 14, cell: ({ reference }) => reference },
  { header: 'State', width: 9, cell: ({ status }) => status },
  { header: 'Opened', width: 19, cell: ({ openedAt }) => instant(openedAt) },
  { header: 'Happened', width: 19, cell: ({ summary }) => instant(summary.occurredAt) },
  { header: 'Kind of call', width: 14, cell: ({ summary }) => summary.kind ?? null },
  { header: 'Where', width: 34, cell: ({ summary }) => summary.where ?? null },
  { header: 'Craft', width: 22, cell: ({ summary }) => list(summary.craft) },
  { header: 'People', width: 9, cell: ({ summary }) => summary.people ?? null },
  { header: 'What became of them', width: 24, cell: ({ summary }) => list(summary.outcomes) },
  {
    header: 'Reports open',
    width: 15,
    cell: ({ duties }) => duties.filter(({ settled }) => !settled).length,
  },
  {
    header: 'Next report due',
    width: 19,
    cell: ({ duties }) => instant(duties.find(({ settled, dueAt }) => !settled && dueAt !== null)?.dueAt),
  },
  { header: 'Tasks open', width: 15, cell: ({ tasks }) => tasks.open },
  { header: 'Tasks overdue', width: 16, cell: ({ tasks }) => tasks.overdue },
];

const DUTIES: Column<OfIncident<RegisterDuty>>[] = [
  { header: 'Reference', width: 14, cell: ({ incident }) => incident.reference },
  { header: 'Duty', width: 34, cell: ({ of }) => dutyWords(of.duty) },
  { header: 'Craft', width: 12, cell: ({ of }) => of.vessel || null },
  { header: 'Outcome', width: 16, cell: ({ of }) => OUTCOME_WORDS[of.outcome] },
  { header: 'Due', width: 19, cell: ({ of }) => instant(of.dueAt) },
  { header: 'Signed', width: 14, cell: ({ of }) => of.decision },
  { header: 'Waiting until', width: 19, cell: ({ of }) => instant(of.waitUntil) },
  { header: 'Filed', width: 8, cell: ({ of }) => of.filed },
  { header: 'How it stands', width: 24, cell: ({ of }) => stateWords(of) },
];

const TASKS: Column<OfIncident<RegisterTask>>[] = [
  { header: 'Reference', width: 14, cell: ({ incident }) => incident.reference },
  { header: 'Task', width: 44, cell: ({ of }) => of.title },
  { header: 'For', width: 12, cell: ({ of }) => of.owner },
  { header: 'Given to', width: 22, cell: ({ of }) => of.assignee },
  { header: 'State', width: 14, cell: ({ of }) => of.state },
  { header: 'Due', width: 19, cell: ({ of }) => instant(of.dueAt) },
  { header: 'Last change', width: 19, cell: ({ of }) => instant(of.updatedAt) },
  { header: 'Source', width: 44, cell: ({ of }) => of.source },
];

const FILINGS: Column<OfIncident<Filing>>[] = [
  { header: 'Reference', width: 14, cell: ({ incident }) => incident.reference },
  { header: 'Form', width: 10, cell: ({ of }) => of.form },
  { header: 'Made', width: 19, cell: ({ of }) => instant(of.at) },
  { header: 'Way', width: 11, cell: ({ of }) => of.way },
  { header: 'To', width: 34, cell: ({ of }) => of.to },
  { header: 'By', width: 11, cell: ({ of }) => of.filedBy },
  { header: 'Name', width: 22, cell: ({ of }) => of.filer },
  { header: 'Confirmation', width: 22, cell: ({ of }) => of.confirmation ?? null },
  {
    header: 'Answers',
    width: 44,
    cell: ({ of }) => of.satisfies.map(({ duty }) => dutyWords(duty)).join('; '),
  },
];

export interface Sheet {
  readonly subject: ExportSubject;
  readonly title: string;
  readonly columns: readonly { readonly header: string; readonly width: number }[];
  /** The rows that one incident gives. */
  readonly rows: (incident: RegisterLine, of: OfLine) => Cell[][];
}

/** What belongs to one incident. */
export interface OfLine {
  readonly tasks: readonly RegisterTask[];
  readonly filings: readonly Filing[];
}

function sheet<Row>(
  subject: ExportSubject,
  title: string,
  columns: readonly Column<Row>[],
  rowsOf: (incident: RegisterLine, of: OfLine) => readonly Row[],
): Sheet {
  const rows: Sheet['rows'] = (incident, of) =>
    rowsOf(incident, of).map((row) => columns.map(({ cell }) => cell(row)));
  return { subject, title, columns, rows };
}

const each = <T>(incident: RegisterLine, items: readonly T[]): OfIncident<T>[] =>
  items.map((of) => ({ incident, of }));

/** The subjects of an export, in the order of the sheets of its workbook. */
export const SHEETS: readonly Sheet[] = [
  sheet('incidents', 'Incidents', INCIDENTS, (incident) => [incident]),
  sheet('duties', 'Duties', DUTIES, (incident) => each(incident, incident.duties)),
  sheet('tasks', 'Tasks', TASKS, (incident, { tasks }) => each(incident, tasks)),
  sheet('filings', 'Filings', FILINGS, (incident, { filings }) => each(incident, filings)),
];
