import type { Decision, DecisionRules, Reopening } from '../../../shared/decision/decision.js';
import {
  followReport,
  reportState,
  type ReportState,
  stateMarks,
} from '../../../shared/decision/follow-report.js';
import { formOf } from '../../../shared/decision/judge-filing.js';
import { lawStanding } from '../../../shared/decision/law-standing.js';
import { type OperatorProposal, proposeOperatorNotice } from '../../../shared/decision/operator-notice.js';
import { keyOf, type OwedReport } from '../../../shared/decision/owed-report.js';
import { type Proposal, proposeDecision } from '../../../shared/decision/propose-decision.js';
import type { Duty, Question, Reporter } from '../../../shared/determination/determination.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import type { StoredDetermination } from '../determination/determination.api.js';
import type { DutyStateRow } from './database/duty-state.row.js';
import type { IncidentBook } from './decision-books.js';
import { reportsWith } from './incident-reports.js';

/** One report of an incident as somebody who decides about it sees it. */
export interface DutyView extends Pick<
  Duty,
  'jurisdiction' | 'kind' | 'outcome' | 'immediate' | 'dueAt' | 'dueAtIfRequired' | 'dueBasis' | 'authority'
> {
  readonly duty: string;
  readonly vessel: string | null;
  /** What answers it: a written report, or a notice by the fastest means. */
  readonly form: 'report' | 'notice';
  readonly reporter: Pick<Reporter, 'who' | 'text'>;
  readonly questions: readonly Question[];
  readonly state: ReportState;
  /** What stands signed. */
  readonly decision: Decision | null;
  /** What was reopened and is not answered yet. */
  readonly reopenings: readonly Reopening[];
  /** Ids of the filings that count for it. */
  readonly filings: readonly string[];
  readonly proposal: Proposal | null;
  readonly operator: OperatorProposal | null;
  /** Why a call to the agency or counsel comes before "no report due"; null where none is needed. */
  readonly callFirst: string | null;
  /** Since when it stands as it does. */
  readonly changedAt: string;
}

/** What the duties of an incident are seen with. */
export interface DutyQuestion {
  readonly stored: StoredDetermination;
  readonly book: IncidentBook;
  readonly rows: readonly DutyStateRow[];
  /** RFC 3339. */
  readonly now: string;
  readonly rules: DecisionRules;
}

export function viewDuties(question: DutyQuestion): DutyView[] {
  const reports = reportsWith(question.stored, question.book);
  return reports.map((report) => viewDuty(report, reports, question));
}

/** The day at the place of the incident. */
export function dayThere({ determination }: StoredDetermination, now: string): string {
  return zoneClock(determination.timeZone).localDate(Date.parse(now));
}

/** The row of a report, which may still be kept under no craft's name. */
export function rowOf(rows: readonly DutyStateRow[], report: OwedReport): DutyStateRow | null {
  const { duty, vessel } = keyOf(report);
  return rows.find((row) => row.duty === duty && row.vessel === (vessel ?? '')) ?? null;
}

function viewDuty(report: OwedReport, all: readonly OwedReport[], question: DutyQuestion): DutyView {
  const { stored, book, rows, rules } = question;
  const { duty, reporter, law } = report;
  const now = Date.parse(question.now);
  const standing = followReport(report, all, book);
  const row = rowOf(rows, report);
  const filed = standing.filings.length > 0;
  const { because } = lawStanding(
    duty.packBasis,
    law?.readOn ?? null,
    dayThere(stored, question.now),
    rules.recheckMonths,
  );
  const notices = book.operatorNotices.filter(({ vessel }) => vessel === reporter.vessel);
  const { jurisdiction, kind, outcome, immediate, dueAt, dueAtIfRequired, dueBasis, authority, questions } =
    duty;
  return {
    ...keyOf(report),
    jurisdiction,
    kind,
    form: formOf(duty),
    outcome,
    immediate,
    dueAt,
    dueAtIfRequired,
    dueBasis,
    authority,
    reporter: { who: reporter.who, text: reporter.text },
    questions,
    state: reportState(stateMarks(report, standing), now),
    decision: standing.decision,
    reopenings: standing.reopenings,
    filings: standing.filings.map(({ id }) => id),
    proposal: proposeDecision({
      report,
      filed,
      supplementDue: standing.supplementDue,
      decision: standing.decision,
      callFirst: report.gone === true ? '' : because,
      knownAt: row?.clockSince ?? stored.madeAt,
      now,
      rules,
    }),
    operator: proposeOperatorNotice({ report, facts: stored.facts, notices, filed, now, rules }),
    callFirst: because === '' || report.gone === true ? null : because,
    changedAt: row?.changedAt ?? stored.madeAt,
  };
}
