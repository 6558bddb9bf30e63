import { randomUUID } from 'node:crypto';
import { earliestClock } from '../../../shared/decision/decision.js';
import { type ReportStanding, stateMarks } from '../../../shared/decision/follow-report.js';
import type { OwedReport } from '../../../shared/decision/owed-report.js';
import type { DutyStateRow } from './database/duty-state.row.js';

/** Behind every instant, so that what has no clock comes last in a list by deadline. */
const NEVER = '~';

/** What a row of the list says of a report, from how it stands. */
export interface DutyStateParts {
  readonly incidentId: string;
  readonly report: OwedReport;
  readonly standing: ReportStanding;
  /** The row of the same report so far. */
  readonly before: DutyStateRow | null;
  /** Outcome, deadline, reporter, authority or law are not as they were. */
  readonly changed: boolean;
  /** When the determination was made that it follows from. */
  readonly at: string;
}

export function dutyStateOf({
  incidentId,
  report,
  standing,
  before,
  changed,
  at,
}: DutyStateParts): DutyStateRow {
  const { duty, reporter } = report;
  const marks = stateMarks(report, standing);
  const dueAt = instantOf(earliestClock(duty));
  return {
    id: before?.id ?? randomUUID(),
    incidentId,
    duty: duty.id,
    vessel: reporter.vessel ?? '',
    outcome: duty.outcome,
    immediate: duty.immediate,
    dueAt,
    overdueAfter: instantOf(marks.overdueAfter),
    decision: marks.decision,
    waitUntil: instantOf(marks.waitUntil),
    filed: marks.filed,
    supplementDue: marks.supplementDue,
    settled: marks.filed ? !marks.supplementDue : marks.decision === 'no-report',
    dueOrder: dueAt ?? NEVER,
    changedAt: before === null || changed ? at : before.changedAt,
    clockSince: before !== null && before.dueAt === dueAt ? before.clockSince : at,
  };
}

function instantOf(milliseconds: number | null): string | null {
  return milliseconds === null ? null : new Date(milliseconds).toISOString();
}
