import type { ItemCounts, ReportHead } from '../../../../shared/report/filled-report.js';
import { ITEM_STATES } from '../../../../shared/report/filled-report.js';
import { tellZonedTime } from '../../../../shared/report/tell-value.js';
import { STATE_NAMES } from '../../../../shared/place/state-codes.js';
import type { ReportDuty } from '../duties-for.js';
import type { Paper } from '../../platform/paper/paper.js';
import type { Sheet } from './sheet.js';
import { drawSign, STATE_WORDS } from './state-sign.js';

/** `reporterWords({ reporter: 'owner', customerWrites: false })` is `'owner'`. */
export function reporterWords({
  reporter,
  customerWrites,
}: Pick<ReportHead, 'reporter' | 'customerWrites'>): string {
  if (reporter === 'owner') return 'owner';
  return customerWrites ? 'operator (a customer)' : 'operator';
}

export function drawTitle(paper: Paper, { reference, report, timeZone, asOf, printedBy }: Sheet): void {
  paper.document.y = 48;
  paper.write('H1', 'Accident report worksheet', { font: 'bold', size: 15 });
  paper.space(4);
  paper.rule(paper.document.y, 4);
  paper.space(10);
  paper.write('P', reference, { font: 'bold', size: 32 });
  paper.write('P', `${report.vessel}: report of the ${reporterWords(report)}`, { font: 'bold', size: 14 });
  paper.space(6);
  paper.write('P', `As of ${tellZonedTime(asOf, timeZone)}. Printed by ${printedBy}.`);
}

const OUTCOMES = {
  required: 'Required',
  'not-required': 'Not required on what is known',
  undetermined: 'Cannot tell yet',
} as const;

/** What the report is due for, each with its clock large; without duties, that none was determined is no sign of none. */
export function drawDuties(paper: Paper, { duties, report, timeZone }: Sheet): void {
  paper.space(14);
  paper.write('H2', 'What it is due for', { font: 'bold', size: 12 });
  if (duties.length === 0) {
    paper.space(4);
    paper.write(
      'P',
      'No report of this vessel and reporter has been determined. That is no sign that none is due.',
    );
    return;
  }
  const table = paper.group('Table');
  for (const duty of duties) {
    paper.space(8);
    paper.needs(56);
    const top = paper.document.y;
    paper.rule(top, 1.2);
    const row = paper.group('TR', table);
    paper.write(
      'TH',
      `${jurisdictionOf(duty)}: ${OUTCOMES[duty.outcome]}`,
      { font: 'bold', size: 10.5, width: 240 },
      row,
      top + 6,
    );
    const below = paper.document.y;
    paper.write('TD', dueOf(duty, timeZone), { font: 'bold', size: 13, left: 300, width: 264 }, row, top + 5);
    paper.write('TD', standingOf(duty, report), { size: 9 }, row, Math.max(below, paper.document.y));
    row.end();
  }
  table.end();
}

function jurisdictionOf({ jurisdiction }: ReportDuty): string {
  const code = jurisdiction.replace(/^us-?/, '').toUpperCase();
  return code === '' ? 'Federal rule' : (STATE_NAMES[code] ?? code);
}

function dueOf({ outcome, dueAt, dueAtIfRequired }: ReportDuty, timeZone: string): string {
  if (outcome === 'not-required') return 'No date';
  const due = dueAt ?? dueAtIfRequired;
  if (due === null) return 'No date known';
  return outcome === 'required'
    ? `By ${tellZonedTime(due, timeZone)}`
    : `If due, by ${tellZonedTime(due, timeZone)}`;
}

function standingOf({ state, authority, reporter }: ReportDuty, { craft, vessel }: ReportHead): string {
  const to = authority === null ? 'Where it goes: ask the agency.' : `To: ${authority}.`;
  // The determination knows the craft by its id in the record.
  const who = craft === null ? reporter.text : reporter.text.replaceAll(craft, vessel);
  return `${who} Stands: ${state.replaceAll('-', ' ')}. ${to}`;
}

/** How far the report is filled in, in three large figures. */
export function drawStanding(paper: Paper, counts: ItemCounts): void {
  paper.space(18);
  paper.needs(90);
  paper.write('H2', 'How far it is filled in', { font: 'bold', size: 12 });
  const top = paper.document.y + 6;
  const list = paper.group('L');
  ITEM_STATES.forEach((state, place) => {
    const left = 48 + place * 172;
    paper.artifact('Layout', () => drawSign(paper, state, left, top + 10));
    const item = paper.group('LI', list);
    paper.write(
      'Lbl',
      String(counts[state]),
      { font: 'bold', size: 26, left: left + 18, width: 60 },
      item,
      top,
    );
    paper.write('LBody', STATE_WORDS[state], { size: 11, left: left + 64, width: 100 }, item, top + 12);
    item.end();
  });
  list.end();
  paper.document.y = top + 40;
}
