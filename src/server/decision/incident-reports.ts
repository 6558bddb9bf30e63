import { listGoneReports, listOwedReports, type OwedReport } from '../../../shared/decision/owed-report.js';
import { packCode } from '../../../shared/law/pack-code.js';
import { standingFilings } from '../../../shared/decision/filing.js';
import type { DecisionBook } from '../../../shared/decision/follow-report.js';
import type { StoredDetermination } from '../determination/determination.api.js';

/** The reports that a stored determination calls for, with the texts of the law that it used. */
export function reportsIn({ determination, facts, packs }: StoredDetermination): OwedReport[] {
  return listOwedReports(determination, facts, (jurisdiction, other) => {
    const own = jurisdiction === 'us' ? 'US' : jurisdiction.replace(/^us-/, '').toUpperCase();
    const used = packs.find((pack) => packCode(pack) === (other ?? own));
    return used === undefined ? null : { version: used.sha256, readOn: used.readOn };
  });
}

/** The same, and those behind them that were filed and are no longer called for. */
export function reportsWith(
  stored: StoredDetermination,
  { filings }: Pick<DecisionBook, 'filings'>,
): OwedReport[] {
  const reports = reportsIn(stored);
  const filed = standingFilings(filings).flatMap(({ satisfies }) => satisfies);
  return [...reports, ...listGoneReports(reports, filed)];
}
