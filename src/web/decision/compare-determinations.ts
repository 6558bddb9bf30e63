import { compareReports } from '../../../shared/decision/compare-reports.js';
import { listOwedReports, type OwedReport } from '../../../shared/decision/owed-report.js';
import type { Determination } from '../../../shared/determination/determination.js';
import { nameDuty } from '../../../shared/determination/duty-words.js';
import type { IncidentFacts } from '../../../shared/record/incident-facts.js';

export { nameDuty };

/** A determination with the facts that it was made on. */
export interface Determined {
  readonly facts: IncidentFacts;
  readonly determination: Determination;
}

/** What is not as it was with one report, in words. */
export interface WordsOfChange {
  readonly title: string;
  readonly changes: readonly string[];
}

/**
 * What differs between two determinations and bears on a decision, a line each; empty where nothing does.
 * @example compareDeterminations(before, after)[0]
 * // { title: 'Accident report, Texas (PWC-7)', changes: ['It was “Not required” and is now “Required”.'] }
 */
export function compareDeterminations(before: Determined, after: Determined): WordsOfChange[] {
  const owed = ({ determination, facts }: Determined): OwedReport[] =>
    listOwedReports(determination, facts, () => null);
  return compareReports(owed(before), owed(after)).map(({ key, changes }) => ({
    title: nameDuty(key.duty, key.vessel),
    changes: changes.map(({ text }) => text),
  }));
}
