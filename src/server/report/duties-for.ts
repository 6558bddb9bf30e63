import type { Reporter as DutyReporter } from '../../../shared/determination/determination.js';
import type { ReportHead, Reporter } from '../../../shared/report/filled-report.js';
import type { DutyView } from '../decision/decision.api.js';

/** A duty that a report answers, as it stands. */
export type ReportDuty = Pick<
  DutyView,
  'duty' | 'jurisdiction' | 'outcome' | 'dueAt' | 'dueAtIfRequired' | 'authority' | 'state' | 'reporter'
>;

/** Kinds of duties that 33 CFR 173.57 or its like in a state describes the contents for. */
const ACCIDENT_REPORTS = ['accident-report', 'owner-report', 'out-of-state-report'];

/** Where the operator is to report, the owner is as soon as the operator cannot (33 CFR 173.55(c)). */
const REPORTERS: Readonly<Record<Reporter, readonly DutyReporter['who'][]>> = {
  owner: ['owner', 'operator', 'operator-else-owner', 'operator-or-owner'],
  operator: ['operator', 'operator-else-owner', 'operator-or-owner'],
};

/** The duties of a vessel and reporter that the official report answers, whether or not it is due. */
export function dutiesFor(
  { craft, reporter }: Pick<ReportHead, 'craft' | 'reporter'>,
  duties: readonly DutyView[],
): ReportDuty[] {
  return duties
    .filter(
      (one) =>
        ACCIDENT_REPORTS.includes(one.kind) &&
        (one.vessel === null || craft === null || one.vessel === craft) &&
        REPORTERS[reporter].includes(one.reporter.who),
    )
    .map(({ duty, jurisdiction, outcome, dueAt, dueAtIfRequired, authority, state, reporter: who }) => ({
      duty,
      jurisdiction,
      outcome,
      dueAt,
      dueAtIfRequired,
      authority,
      state,
      reporter: who,
    }));
}
