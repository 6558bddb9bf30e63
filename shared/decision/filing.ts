import type { SignedBy } from './decision.js';
import type { ReportKey } from './owed-report.js';

/** A written report, or a notice given by the fastest means. */
export type FilingForm = 'report' | 'notice';
export const FILING_FORMS: readonly FilingForm[] = ['report', 'notice'];

export type FilingWay = 'online' | 'mail' | 'email' | 'fax' | 'phone' | 'radio' | 'in-person';
export const FILING_WAYS: readonly FilingWay[] = [
  'online',
  'mail',
  'email',
  'fax',
  'phone',
  'radio',
  'in-person',
];

export type Filer = 'owner' | 'operator' | 'officer' | 'other';
export const FILERS: readonly Filer[] = ['owner', 'operator', 'officer', 'other'];

/** A report or notice as somebody says that it was made. */
export interface FilingDetails {
  readonly form: FilingForm;
  /** RFC 3339: when it was made. */
  readonly at: string;
  readonly way: FilingWay;
  /** Name of the authority that it was made to, and of the person there where known. */
  readonly to: string;
  /** Jurisdiction of that authority: `us-tx`, or `us` for the Coast Guard. */
  readonly jurisdiction: string;
  readonly filedBy: Filer;
  /** Name of whoever made it. */
  readonly filer: string;
  /** Number or words by which the authority confirmed it. */
  readonly confirmation?: string;
  /** Id of the copy among the evidence. */
  readonly copy?: string;
  readonly remark?: string;
  /** The reports that it answers; none where it only takes the place of one that was recorded wrongly. */
  readonly satisfies: readonly ReportKey[];
  /** Id of an earlier filing that was recorded wrongly and no longer counts; `remark` says why. */
  readonly replaces?: string;
}

export interface Filing extends FilingDetails {
  readonly id: string;
  readonly by: SignedBy;
  readonly recordedAt: string;
}

/**
 * The filings that count: those whose place no later one took.
 * @example standingFilings([{ …, id: 'f1' }, { …, id: 'f2', replaces: 'f1' }]).map(({ id }) => id) // ['f2']
 */
export function standingFilings(filings: readonly Filing[]): Filing[] {
  const replaced = new Set(filings.flatMap(({ replaces }) => replaces ?? []));
  return filings.filter(({ id }) => !replaced.has(id));
}
