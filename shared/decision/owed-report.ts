import type { Determination, Duty, Reporter } from '../determination/determination.js';
import { isConduct } from '../determination/duty-kinds.js';
import type { IncidentFacts } from '../record/incident-facts.js';

/** Which report of an incident: one duty for the operator of one vessel. */
export interface ReportKey {
  /** Id of the duty, such as `us-tx/accident-report`. */
  readonly duty: string;
  /** Id of the craft in the facts; null while none is named. */
  readonly vessel: string | null;
}

/** The text of one jurisdiction's law as it was used. */
export interface LawUsed {
  /** Hash of the rule pack's content. */
  readonly version: string;
  /** ISO date on which the text was read. */
  readonly readOn: string;
}

/**
 * One duty as it stands for one of our vessels: what a decision is signed on. Two of our craft in one occurrence have
 * two operators, each of whom must report (33 CFR 173.55(a): "the operator shall").
 */
export interface OwedReport {
  readonly duty: Duty;
  readonly reporter: Reporter;
  /** Null where no pack was used, as while no state is known. */
  readonly law: LawUsed | null;
  /** It was filed, and the present determination does not call for it any more. */
  readonly gone?: true;
}

/**
 * The reports that are ours to decide about, in the order of the determination. Those of vessels that are known to be
 * somebody else's are left out; while no vessel is known to be ours, every one that may be is in.
 * Duties that no paper answers are not among them.
 * @param lawOf the law used for a duty, by its jurisdiction, such as `us-tx`, and its pack on another matter
 * @example listOwedReports(determination, facts, () => null).map(keyOf)
 * // [{ duty: 'us/accident-report', vessel: 'PWC 3' }, { duty: 'us/accident-report', vessel: 'PWC 7' }, …]
 */
export function listOwedReports(
  { duties }: Determination,
  { vessels }: Pick<IncidentFacts, 'vessels'>,
  lawOf: (jurisdiction: string, pack?: string) => LawUsed | null,
): OwedReport[] {
  const known = vessels.some(({ ours }) => ours === true);
  const others = new Set(
    vessels.filter(({ ours }) => (known ? ours !== true : ours === false)).map(({ id }) => id),
  );
  return duties
    .filter((duty) => !isConduct(duty))
    .flatMap((duty) =>
      duty.reporters
        .filter(({ vessel }) => vessel === null || !others.has(vessel))
        .map((reporter) => ({ duty, reporter, law: lawOf(duty.jurisdiction, duty.pack) })),
    );
}

/** `keyOf(report)` is `{ duty: 'us/accident-report', vessel: 'PWC 7' }`. */
export function keyOf({ duty, reporter }: OwedReport): ReportKey {
  return { duty: duty.id, vessel: reporter.vessel };
}

/**
 * The report that a key means. One that was named before any craft was known is the one of the only craft there is;
 * of two craft it is neither, since nobody said whose it was.
 * @example findReport([reportOfPwc7], { duty: 'us/accident-report', vessel: null }) // reportOfPwc7
 */
export function findReport(reports: readonly OwedReport[], key: ReportKey): OwedReport | null {
  const ofDuty = reports.filter(({ duty }) => duty.id === key.duty);
  const exact = ofDuty.find(({ reporter }) => reporter.vessel === key.vessel);
  if (exact !== undefined) return exact;
  const [only, ...more] = ofDuty;
  return key.vessel === null && only !== undefined && more.length === 0 ? only : null;
}

/** `sameReport({ duty: 'us/x', vessel: 'A' }, { duty: 'us/x', vessel: 'B' })` is false. */
export function sameReport(one: ReportKey, other: ReportKey): boolean {
  return one.duty === other.duty && one.vessel === other.vessel;
}

/**
 * Reports that were filed and that the determination no longer calls for: nothing is due on them, but the authority
 * holds a paper that may have to be supplemented.
 * @example listGoneReports([], [{ duty: 'us-tx/accident-report', vessel: 'PWC 7' }])[0]?.duty.outcome // 'not-required'
 */
export function listGoneReports(reports: readonly OwedReport[], filed: readonly ReportKey[]): OwedReport[] {
  const gone = filed.filter((key) => findReport(reports, key) === null);
  const keys = gone.filter((key, index) => gone.findIndex((other) => sameReport(key, other)) === index);
  return keys.map(({ duty, vessel }) => {
    const [jurisdiction = '', kind = ''] = duty.split('/');
    const reporter: Reporter = { vessel, who: 'operator-or-owner', text: 'Whoever filed it.' };
    return {
      duty: {
        id: duty,
        jurisdiction,
        kind,
        outcome: 'not-required',
        reasons: [
          { trigger: 'gone', value: 'false', text: 'The present determination does not call for it.' },
        ],
        questions: [],
        immediate: false,
        dueAt: null,
        dueAtIfRequired: null,
        dueBasis: null,
        authority: null,
        reporters: [reporter],
        citations: [],
        packBasis: 'not-read',
      },
      reporter,
      law: null,
      gone: true,
    };
  });
}
