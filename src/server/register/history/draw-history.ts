import { tellMoney } from '../../../../shared/report/tell-money.js';
import { tellZonedTime } from '../../../../shared/report/tell-value.js';
import { tellDay } from '../../../../shared/time/tell-time.js';
import { type Block, drawBlock } from '../../hand-over/hand-over.api.js';
import { PAGE, Paper } from '../../platform/paper/paper.js';
import type { IncidentHistory } from './history.service.js';
import { historyNotes, historyTables, type HistoryTable, linesTable, SUMMED } from './history-tables.js';

/**
 * The history on paper, for whoever renews a policy. The same history is the same bytes.
 * @returns the PDF as a stream
 */
export function drawHistory(
  history: IncidentHistory,
  printedBy: string,
  timeZone: string,
): PDFKit.PDFDocument {
  const { from, until, asOf } = history;
  const paper = new Paper({
    title: `Incident history, ${tellDay(from)} to ${tellDay(until)}`,
    subject: 'Incidents by period, craft, station and type',
    language: 'en-US',
    asOf,
  });
  paper.document.y = 48;
  paper.write('H1', 'Incident history', { font: 'bold', size: 15 });
  paper.space(4);
  paper.rule(paper.document.y, 4);
  paper.space(10);
  paper.write('P', `${tellDay(from)} to ${tellDay(until)}`, { font: 'bold', size: 22 });
  drawBlock(paper, { kind: 'list', items: historyNotes(history) });
  for (const table of historyTables(history)) drawTable(paper, table);
  drawLines(paper, linesTable(history));
  const foot = `As of ${tellZonedTime(asOf, timeZone)}. Printed by ${printedBy}.`;
  return paper.finish((page, pages) => {
    paper.document.rect(PAGE.left, 744, PAGE.right - PAGE.left, 0.8).fill('#000000');
    paper.draw(foot, { size: 8.5, width: 400 }, 750);
    paper.draw(
      `Page ${page} of ${pages}`,
      { font: 'bold', size: 8.5, left: 454, width: 110, align: 'right' },
      750,
    );
  });
}

type Cells = HistoryTable['rows'][number];

const GROUP_SHARES = [0.2, 0.1, 0.06, 0.06, 0.095, 0.085, 0.09, 0.19, 0.12] as const;

/** On paper damage is one cell, as the columns of a workbook would be too narrow to read. */
function drawTable(paper: Paper, { title, columns, rows }: HistoryTable): void {
  const titles = [...columns.slice(0, 6), 'Nobody listed', 'Damage', 'Paid'];
  const cells = rows.map((row) => [...row.slice(0, 7).map(String), damageOf(row, 7), paidOf(row)]);
  // The sum of all stands under the months alone: of the other groups an incident may be in several.
  const total = title === SUMMED ? cells.pop() : undefined;
  drawBlock(paper, { kind: 'part', title });
  drawBlock(paper, { ...tableOf(titles, GROUP_SHARES, cells), ...(total && { total }) });
}

const LINE_SHARES = [0.12, 0.19, 0.24, 0.15, 0.14, 0.16] as const;

function drawLines(paper: Paper, { title, rows }: HistoryTable): void {
  drawBlock(paper, { kind: 'part', title });
  const cells = rows.map((row) => {
    const [reference, day, events, craft, , hurt, died, missing, open, unlisted] = row;
    const people = [
      [hurt, 'hurt'],
      [died, 'died'],
      [missing, 'missing'],
      [open, 'not known'],
      [unlisted === 0 ? 0 : 'Nobody', 'listed'],
    ].flatMap(([count, word]) => (count === 0 ? [] : [`${count} ${word}`]));
    return [reference, tellDay(String(day)), events || 'Not said yet', craft]
      .map(String)
      .concat(people.join(', ') || 'None listed as hurt', damageOf(row, 10));
  });
  drawBlock(paper, tableOf(['Incident', 'Day', 'Events', 'Craft', 'People', 'Damage'], LINE_SHARES, cells));
}

function tableOf(
  titles: readonly string[],
  shares: readonly number[],
  rows: readonly string[][],
): Extract<Block, { kind: 'table' }> {
  return {
    kind: 'table',
    columns: titles.map((title, place) => ({ title, share: shares[place] ?? 0.1 })),
    rows,
  };
}

function damageOf(row: Cells, place: number): string {
  const [low, high, unknown] = [0, 1, 2].map((at) => Number(row[place + at]));
  if (!high) return unknown ? `${unknown} without a figure` : 'None entered';
  const sum = low === high ? tellMoney(high) : tellMoney({ low, high });
  return unknown ? `${sum}, and ${unknown} without a figure` : sum;
}

const paidOf = (row: Cells): string => {
  const paid = row.at(-1);
  return typeof paid === 'number' ? tellMoney(paid) : 'Not entered';
};
