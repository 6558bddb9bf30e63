import { compareReports } from './compare-reports.js';
import type { Change, Reopening } from './decision.js';
import { type DecisionBook, followReport } from './follow-report.js';
import { formOf } from './judge-filing.js';
import { findReport, keyOf, type OwedReport } from './owed-report.js';

/** A reopening before it is written down. */
export type NewReopening = Omit<Reopening, 'id' | 'at' | 'determination'>;

/**
 * What the step from one determination to the next reopens: each report on which something was signed or filed and
 * that is not as it was. A filed one is to be supplemented, also where a further ground became known, such as a death
 * after an injury was reported: what was filed does not tell it. Once anything was decided on an incident, a report that
 * was not called for before is told too, unless nothing is due on it.
 * @example reopenReports(before, after, { decisions: [], reopenings: [], filings: [] }) // []
 */
export function reopenReports(
  before: readonly OwedReport[],
  after: readonly OwedReport[],
  book: DecisionBook,
): NewReopening[] {
  if (book.decisions.length + book.filings.length === 0) return [];
  return compareReports(before, after).flatMap(({ key, formerKey, changes }): NewReopening[] => {
    const now = findReport(after, key);
    const was = findReport(before, formerKey);
    const touched = now === null ? touchedBy(was, before, book) : touchedBy(now, after, book);
    const groundsAlone = changes.every(({ what }) => what === 'ground');
    if (groundsAlone && touched?.filing === undefined) return [];
    if (touched !== null) return [{ ...key, ...touched, changes }];
    return was === null && now !== null && now.duty.outcome !== 'not-required' ? [{ ...key, changes }] : [];
  });
}

/**
 * What the operator's word reopens: the written reports of that craft which were decided and are not filed.
 * @example reopenForOperator(change, 'PWC 7', reports, book).map(({ duty }) => duty) // ['us/accident-report']
 */
export function reopenForOperator(
  change: Change,
  vessel: string | null,
  reports: readonly OwedReport[],
  book: DecisionBook,
): NewReopening[] {
  return reports
    .filter(({ duty, reporter }) => reporter.vessel === vessel && formOf(duty) === 'report')
    .flatMap((report): NewReopening[] => {
      const touched = touchedBy(report, reports, book);
      if (touched?.decision === undefined || touched.filing !== undefined) return [];
      return [{ ...keyOf(report), ...touched, changes: [change] }];
    });
}

/** The decision and the filing that a change of the report concerns; null where there is neither. */
function touchedBy(
  report: OwedReport | null,
  all: readonly OwedReport[],
  book: DecisionBook,
): Pick<Reopening, 'decision' | 'filing'> | null {
  if (report === null) return null;
  const { decision, reopenings, filings } = followReport(report, all, book);
  const signed = decision?.id ?? reopenings.at(-1)?.decision;
  const filed = filings.at(-1)?.id;
  if (signed === undefined && filed === undefined) return null;
  return { ...(signed !== undefined && { decision: signed }), ...(filed !== undefined && { filing: filed }) };
}
