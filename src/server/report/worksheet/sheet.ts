import type { FilledReport } from '../../../../shared/report/filled-report.js';
import type { ReportDuty } from '../duties-for.js';

/** What a worksheet is printed from. */
export interface Sheet {
  readonly reference: string;
  readonly report: FilledReport;
  readonly duties: readonly ReportDuty[];
  readonly timeZone: string;
  /** RFC 3339. */
  readonly asOf: string;
  readonly printedBy: string;
  /** What is doubtful about the list of items. */
  readonly doubts: readonly string[];
}
