import type { Determination, Duty } from '../determination/determination.js';
import { nameJurisdiction, nameKind } from '../determination/duty-words.js';
import { isOtherMatter } from '../determination/duty-kinds.js';
import type { IncidentFacts, Vessel } from '../record/incident-facts.js';
import type { Filing, FilingDetails, FilingForm } from './filing.js';
import { findReport, keyOf, type OwedReport, type ReportKey } from './owed-report.js';

export type FilingRefusalCode =
  | 'FILING_IN_FUTURE'
  | 'FILING_FOR_NOTHING'
  | 'NO_SUCH_REPORT'
  | 'ANOTHER_FORM'
  | 'FILED_ELSEWHERE'
  | 'ONE_OPERATOR_A_REPORT'
  | 'NO_SUCH_FILING'
  | 'REMARK_MISSING';

/** Why a filing cannot stand for what it names, at its place in what was sent (RFC 6901). */
export interface FilingRefusal {
  readonly code: FilingRefusalCode;
  readonly pointer: string;
  readonly detail: string;
}

export interface FilingQuestion {
  readonly filing: FilingDetails;
  readonly reports: readonly OwedReport[];
  readonly facts: Pick<IncidentFacts, 'vessels'>;
  readonly states: Determination['states'];
  /** Filings of the incident so far. */
  readonly filings: readonly Filing[];
  /** Epoch milliseconds. */
  readonly now: number;
}

/**
 * Every reason why a filing cannot stand for what it names; none when it can.
 * @example judgeFiling({ …, filing: { …, form: 'notice', satisfies: [{ duty: 'us/accident-report', vessel }] } })
 * // [{ code: 'ANOTHER_FORM', pointer: '/satisfies/0', detail: … }]
 */
export function judgeFiling(question: FilingQuestion): FilingRefusal[] {
  const { filing, filings, now } = question;
  const refusals: FilingRefusal[] = [];
  const refuse = (code: FilingRefusalCode, pointer: string, detail: string): unknown =>
    refusals.push({ code, pointer, detail });
  if (Date.parse(filing.at) > now) refuse('FILING_IN_FUTURE', '/at', 'It is recorded once it was made.');
  if (filing.satisfies.length === 0 && filing.replaces === undefined) {
    refuse('FILING_FOR_NOTHING', '/satisfies', 'Name the report that it answers.');
  }
  if (filing.replaces !== undefined) {
    if (!filings.some(({ id }) => id === filing.replaces)) {
      refuse('NO_SUCH_FILING', '/replaces', 'There is no such filing of this incident.');
    }
    if ((filing.remark ?? '').trim() === '') {
      refuse('REMARK_MISSING', '/remark', 'Say what was wrong with the filing whose place it takes.');
    }
  }
  filing.satisfies.forEach((key, index) => refusals.push(...judgeKey(question, key, `/satisfies/${index}`)));
  const vessels = new Set(filing.satisfies.map(({ vessel }) => vessel));
  if (filing.form === 'report' && vessels.size > 1) {
    const detail =
      'Each operator makes a report of their own (33 CFR 173.55(a)): record one filing for each craft.';
    refuse('ONE_OPERATOR_A_REPORT', '/satisfies', detail);
  }
  return refusals;
}

/**
 * The reports of one craft that a filing may stand for: a federal report is made to a state's authority
 * (33 CFR 173.59), and the same paper answers that state's own duty beside it.
 * @example suggestSatisfied({ form: 'report', jurisdiction: 'us-tx' }, 'PWC 7', reports, facts, states)
 * // [{ duty: 'us/accident-report', vessel: 'PWC 7' }, { duty: 'us-tx/accident-report', vessel: 'PWC 7' }]
 */
export function suggestSatisfied(
  { form, jurisdiction }: Pick<FilingDetails, 'form' | 'jurisdiction'>,
  vessel: string | null,
  reports: readonly OwedReport[],
  facts: FilingQuestion['facts'],
  states: FilingQuestion['states'],
): ReportKey[] {
  return reports
    .filter(({ duty, reporter }) => reporter.vessel === vessel && formOf(duty) === form)
    .filter((report) => whyElsewhere(jurisdiction, report, facts, states) === null)
    .map(keyOf);
}

function judgeKey(
  { filing, reports, facts, states }: FilingQuestion,
  key: ReportKey,
  pointer: string,
): FilingRefusal[] {
  const report = findReport(reports, key);
  if (report === null) {
    return [
      { code: 'NO_SUCH_REPORT', pointer, detail: 'No such report stands in the present determination.' },
    ];
  }
  const needed = formOf(report.duty);
  if (needed !== filing.form) {
    const detail =
      needed === 'notice'
        ? 'It asks for a notice by the fastest means: a written report does not stand for it.'
        : 'It asks for a written report: a notice does not stand for it.';
    return [{ code: 'ANOTHER_FORM', pointer, detail: `${title(report.duty)}. ${detail}` }];
  }
  const why = whyElsewhere(filing.jurisdiction, report, facts, states);
  return why === null ? [] : [{ code: 'FILED_ELSEWHERE', pointer, detail: why }];
}

/** `formOf({ …, kind: 'immediate-notice' })` is `'notice'`. */
export function formOf({ kind }: Pick<Duty, 'kind'>): FilingForm {
  return kind === 'notice' || kind.endsWith('-notice') ? 'notice' : 'report';
}

/**
 * Why what was filed with one authority is not filed for a duty; null when it is. A state's duty is answered in that
 * state alone. The federal report goes to the authority of the state of number (without a number, of principal use,
 * which whoever files vouches for), or to that of the state where it happened (33 CFR 173.59); the federal notice to
 * the nearest reporting authority, whose it may be (33 CFR 173.53(a)). Another matter has an authority of its own.
 */
function whyElsewhere(
  jurisdiction: string,
  { duty, reporter }: OwedReport,
  { vessels }: FilingQuestion['facts'],
  states: FilingQuestion['states'],
): string | null {
  if (duty.jurisdiction === 'state') return 'First record in which state it happened: each has its own law.';
  if (duty.jurisdiction === jurisdiction) return null;
  if (duty.jurisdiction !== 'us') {
    return `${nameJurisdiction(duty.jurisdiction)} has a duty of its own, which is answered there.`;
  }
  if (isOtherMatter(duty)) {
    return `It goes to: ${duty.authority ?? 'its own authority'}. A paper that a state took does not stand for it: record it as made to us.`;
  }
  if (formOf(duty) === 'notice') return null;
  const vessel = vessels.find(({ id }) => id === reporter.vessel);
  if (federalStates(vessel, states).has(jurisdiction) || vessel?.numbered === 'no') return null;
  return 'The federal report goes to the state that numbered the craft or to the state where it happened (33 CFR 173.59).';
}

function federalStates(vessel: Vessel | undefined, states: FilingQuestion['states']): Set<string> {
  const number = vessel?.stateOfNumber;
  return new Set(
    [...states.map(({ state }) => state), ...(number === undefined ? [] : [number])].map(
      (state) => `us-${state.toLowerCase()}`,
    ),
  );
}

function title({ kind, jurisdiction }: Duty): string {
  return `${nameKind(kind)}, ${nameJurisdiction(jurisdiction)}`;
}
