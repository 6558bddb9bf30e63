import { nameJurisdiction, nameKind } from '../determination/duty-words.js';
import { localTime } from '../time/tell-time.js';
import { earliestDue, type DecisionRules, type LegalCall, type Signing } from './decision.js';
import { lawStanding } from './law-standing.js';
import type { OwedReport } from './owed-report.js';

export type SigningRefusalCode =
  | 'WAIT_FOR_NOTHING'
  | 'WAIT_NAMES_NO_QUESTION'
  | 'WAIT_IS_OVER'
  | 'WAIT_PAST_CLOCK'
  | 'WAIT_WITHOUT_CLOCK'
  | 'NO_REPORT_UNDETERMINED'
  | 'REASON_MISSING'
  | 'COUNSEL_MISSING'
  | 'CALL_FIRST';

/** Why something may not be signed now, and what would change that. */
export interface SigningRefusal {
  readonly code: SigningRefusalCode;
  readonly detail: string;
}

export interface SigningQuestion {
  readonly report: OwedReport;
  readonly signing: Signing;
  /** The report was filed: what is signed is about supplementing it. */
  readonly filed: boolean;
  /** Logged calls of the incident. */
  readonly calls: readonly LegalCall[];
  /** RFC 3339: since when the report stands as it does. A call before that was about other facts. */
  readonly changedAt: string;
  /** Epoch milliseconds. */
  readonly now: number;
  /** ISO date where it happened. */
  readonly today: string;
  readonly rules: DecisionRules;
}

const HOUR_MS = 3_600_000;

/**
 * Every reason against signing; none when it may be signed. To report is always allowed.
 * @example judgeSigning({ …, signing: { kind: 'no-report' }, report: undetermined })[0]?.code
 * // 'NO_REPORT_UNDETERMINED'
 */
export function judgeSigning(question: SigningQuestion): SigningRefusal[] {
  switch (question.signing.kind) {
    case 'report':
      return [];
    case 'wait':
      return judgeWait(question, question.signing);
    case 'no-report':
      return judgeNoReport(question, question.signing);
  }
}

function judgeWait(
  question: SigningQuestion,
  { until, questions }: Extract<Signing, { kind: 'wait' }>,
): SigningRefusal[] {
  const { report, filed, now } = question;
  if (report.duty.outcome === 'not-required' && !filed) {
    return [
      {
        code: 'WAIT_FOR_NOTHING',
        detail: 'On these facts nothing is due: sign that, or report all the same.',
      },
    ];
  }
  const refusals: SigningRefusal[] = [];
  const refuse = (code: SigningRefusalCode, detail: string): unknown => refusals.push({ code, detail });
  if (questions.length === 0) {
    refuse('WAIT_NAMES_NO_QUESTION', 'Name at least one question that is waited for.');
  }
  const end = Date.parse(until);
  if (end <= now) refuse('WAIT_IS_OVER', 'Name a time to come until which to wait.');
  // Nothing in 33 CFR part 173 sets a time for supplementing a report that was filed.
  if (!filed) refusals.push(...judgeWaitClock(question, end));
  return refusals;
}

function judgeWaitClock(question: SigningQuestion, end: number): SigningRefusal[] {
  const { report, now, rules } = question;
  const { duty } = report;
  const due = earliestDue(duty);
  if (due === null) {
    if (end <= now + rules.leadHours * HOUR_MS && hasCall(question)) return [];
    const detail = `No clock is known for it, so nobody can say how long it may wait: log a call to the agency or counsel, and wait ${rules.leadHours} hours at most.`;
    return [{ code: 'WAIT_WITHOUT_CLOCK', detail }];
  }
  if (end <= Date.parse(due)) return [];
  const when = localTime(due, now);
  const required = duty.outcome === 'required' ? 'It is' : 'If it is required, it is';
  const detail = duty.immediate
    ? `${required} due without delay, counted from ${when}: report on what is known.`
    : `The earliest time at which it can be due is ${when}: wait no longer than that.`;
  return [{ code: 'WAIT_PAST_CLOCK', detail }];
}

function judgeNoReport(
  question: SigningQuestion,
  { reason, counsel }: Extract<Signing, { kind: 'no-report' }>,
): SigningRefusal[] {
  const { duty } = question.report;
  if (duty.outcome === 'undetermined') {
    const detail =
      'Nobody can tell yet whether it is due, so nobody can sign that it is not: answer what is open, wait, or report.';
    return [{ code: 'NO_REPORT_UNDETERMINED', detail }];
  }
  const refusals: SigningRefusal[] = [];
  if ((duty.outcome === 'required' || question.filed) && !says(reason)) {
    const why = question.filed
      ? 'It was filed, and what it says has changed'
      : 'The law calls for it on these facts';
    refusals.push({ code: 'REASON_MISSING', detail: `${why}: say why nothing is to be reported.` });
  }
  if (duty.outcome === 'required' && !says(counsel)) {
    const detail = 'The law calls for it on these facts: name the counsel who was asked.';
    refusals.push({ code: 'COUNSEL_MISSING', detail });
  }
  if (question.report.gone === true) return refusals;
  const law = lawStanding(
    duty.packBasis,
    question.report.law?.readOn ?? null,
    question.today,
    question.rules.recheckMonths,
  );
  if (!law.mayDecide && !hasCall(question)) {
    const name = `${nameKind(duty.kind)}, ${nameJurisdiction(duty.jurisdiction)}`;
    const detail = `${law.because} Call the agency or counsel about it, and log who said what, before you sign (${name}).`;
    refusals.push({ code: 'CALL_FIRST', detail });
  }
  return refusals;
}

function hasCall({ calls, report, changedAt }: SigningQuestion): boolean {
  return calls.some(
    ({ at, duties }) => duties.includes(report.duty.id) && Date.parse(at) >= Date.parse(changedAt),
  );
}

function says(text: string | undefined): boolean {
  return text !== undefined && text.trim() !== '';
}
