import type { FilingForm, FilingDetails } from '../../../shared/decision/filing.js';
import { suggestSatisfied } from '../../../shared/decision/judge-filing.js';
import { listOwedReports, type ReportKey } from '../../../shared/decision/owed-report.js';
import { craftOf } from './craft-of.js';
import { filledIn } from './filled-in.js';
import type { DutyView } from './service-answers.js';
import type { Matter } from './use-matter.js';

/** A filing while it is written. */
export interface FilingDraft {
  readonly form: FilingForm;
  /** Null while no craft is named. */
  readonly vessel: string | null;
  readonly at: string;
  readonly way: FilingDetails['way'] | '';
  readonly jurisdiction: string;
  readonly to: string;
  readonly filedBy: FilingDetails['filedBy'] | undefined;
  readonly filer: string;
  readonly confirmation: string;
  readonly copy: string;
  readonly remark: string;
  /** Taken out of what the form and the authority would answer. */
  readonly without: ReadonlySet<string>;
  readonly replaces: string;
}

/** A filing that begins at a duty, or at the first that is open. */
export function emptyFiling(matter: Matter, view: DutyView | undefined, filer: string): FilingDraft {
  const [state] = matter.determined.determination.states;
  const there = state === undefined ? 'us' : `us-${state.state.toLowerCase()}`;
  const authority = view === undefined || view.jurisdiction === 'us' ? there : view.jurisdiction;
  return {
    form: view?.form ?? 'report',
    vessel: view?.vessel ?? craftOf(matter.duties)[0] ?? null,
    at: '',
    way: '',
    jurisdiction: authority,
    to: view?.jurisdiction === authority ? (view.authority ?? '') : authorityIn(matter, authority),
    filedBy: undefined,
    filer,
    confirmation: '',
    copy: '',
    remark: '',
    without: new Set(),
    replaces: '',
  };
}

/** To whom the reports of a jurisdiction go, as the determination says. */
export function authorityIn({ duties }: Matter, jurisdiction: string): string {
  return duties.find((duty) => duty.jurisdiction === jurisdiction)?.authority ?? '';
}

/** The reports that a filing of that form with that authority can stand for. */
export function answersOf(
  { determined: { determination, facts } }: Matter,
  { form, jurisdiction, vessel }: Pick<FilingDraft, 'form' | 'jurisdiction' | 'vessel'>,
): ReportKey[] {
  const reports = listOwedReports(determination, facts, () => null);
  return suggestSatisfied({ form, jurisdiction }, vessel, reports, facts, determination.states);
}

/** The authorities that a report may be made to: where it happened, where the craft is numbered, and the Coast Guard. */
export function authoritiesOf({ duties, determined: { determination, facts } }: Matter): string[] {
  const states = [
    ...determination.states.map(({ state }) => state),
    ...facts.vessels.flatMap(({ stateOfNumber }) => stateOfNumber ?? []),
  ].map((state) => `us-${state.toLowerCase()}`);
  const owed = duties.map(({ jurisdiction }) => jurisdiction).filter((one) => one.startsWith('us'));
  return [...new Set([...states, ...owed, 'us'])];
}

/** As it is sent; `at` was read before. */
export function filingBody(draft: FilingDraft, at: string, satisfies: readonly ReportKey[]): object {
  const { form, way, jurisdiction, filedBy, to, filer, confirmation, copy, remark, replaces } = draft;
  return {
    form,
    at,
    way,
    jurisdiction,
    filedBy,
    satisfies,
    ...filledIn({ to, filer, confirmation, copy, remark, replaces }),
  };
}
