import { BASIS_WORDS, nameDate } from './name-law-terms.js';
import type { Correction, NoticeRule, RulePack } from './rule-pack.js';

/** For whoever reads the law of a jurisdiction: what it is worth before what it says. */
export const LAW_CAUTION =
  'Emergency services first: call 911, or the Coast Guard on VHF channel 16. This page is not legal advice and ' +
  'may be out of date. Before you decide that nothing is due, confirm with the agency and with counsel.';

/** For a rental the customer drives and the business owns: 33 CFR 173.3 and 173.55(c). */
export const WHO_IS_WHO =
  'For a rented boat the operator is the customer who had it and the owner is your business.';

/** What a pack says besides its duties, in sentences, whatever it is shown on. */
export interface ToldPack {
  /** On which day and how the text was read, or that none could be. */
  readonly read: string;
  /** Since when it is known to have been in force; null where nothing was read. */
  readonly inForce: string | null;
  /** Where it holds no written report, what that means; null where it holds one, or is about another matter. */
  readonly noReport: string | null;
  readonly scope: readonly string[];
  readonly livery: readonly string[];
  /** The questions whether it is reportable at all, each with what its source says. */
  readonly aids: readonly { readonly question: string; readonly text: string }[];
  readonly corrections: readonly string[];
}

/**
 * @example tellRulePack(texas).read // 'On 25 November 2026, in the law itself. Edition: statute as amended …'
 */
export function tellRulePack(pack: RulePack): ToldPack {
  const { basis, readOn, asOf, liveryDuties, aids = [], corrections = [] } = pack;
  const unread = basis === 'not-read';
  const edition = asOf ? ` Edition: ${asOf}.` : '';
  return {
    read: unread
      ? `No text of the law could be read (tried on ${nameDate(readOn)}).`
      : `On ${nameDate(readOn)}, ${BASIS_WORDS[basis]}.${edition}`,
    inForce: unread ? null : `${tellStart(pack)}. For an accident before that, ask the agency.`,
    noReport: tellNoReport(pack),
    scope: unread ? [] : tellScope(pack),
    livery: liveryDuties.map(
      ({ summary, citation, basis: read }) => `${summary} (${citation}; read ${BASIS_WORDS[read]}.)`,
    ),
    aids: aids.map(({ question, text, source, basis: read, notKnown }) => ({
      question,
      text: `${text} (${source}; read ${BASIS_WORDS[read]}.) Not known: ${notKnown}`,
    })),
    corrections: corrections.map(tellCorrection),
  };
}

/** `titleOfNotice({ id: 'immediate-notice', kind: 'immediate-notice' })` is `'Immediate notice'`. */
export function titleOfNotice({ id, kind }: Pick<NoticeRule, 'id' | 'kind'>): string {
  const words = kind === 'owner-report' ? "owner's report" : kind.replaceAll('-', ' ');
  const title = `${words}${id === kind ? '' : ` (${id.replaceAll('-', ' ')})`}`;
  return title.charAt(0).toUpperCase() + title.slice(1);
}

/** When a notice is due only in some cases; null where always. */
export function tellCondition({
  onlyWhen,
  condition,
}: Pick<NoticeRule, 'onlyWhen' | 'condition'>): string | null {
  const when = onlyWhen.replace(/\.$/, '');
  const open = condition === null ? '; a person must judge that, no recorded fact decides it' : '';
  return when === '' ? null : `${when}${open}.`;
}

function tellNoReport({ report, noWrittenReport, basis, subject }: RulePack): string | null {
  if (report !== null || subject !== undefined) return null;
  if (noWrittenReport) return 'The law asks no written report of private people.';
  return basis === 'not-read'
    ? 'The law was not read, so nothing can be said. That is not "no report": ask the agency now.'
    : 'The texts read show none. That is not "no report": ask the agency now.';
}

function tellStart({ effectiveFrom, effectiveFromBasis }: RulePack): string {
  const date = nameDate(effectiveFrom);
  return {
    stated: `Since ${date}, a date that the sources state`,
    'edition-date': `Since ${date} or earlier; that is the date of the edition read`,
    assumed: `Taken to be since ${date}, as no better date is known`,
  }[effectiveFromBasis];
}

function tellScope(pack: RulePack): string[] {
  const vessels = {
    'all-vessels': 'All vessels',
    motorized: 'Vessels with a motor',
    numbered: 'Vessels that must be numbered',
    'federal-scope':
      'Vessels on waters of the United States that are used for recreation or must be numbered, but not those subject to inspection (33 CFR 173.51)',
    employer: 'Whatever the craft: it is about employees of the business',
    'federal-waters': 'All vessels on waters of the United States',
    'commercial-service':
      'Vessels subject to federal inspection, and documented vessels in commercial service; others report under 33 CFR part 173 (46 CFR 26.03-5(b))',
    'rented-out': 'Craft that the business rents out',
    unknown: 'No limit was found in the texts read, so take all as covered',
  }[pack.appliesTo];
  const left = pack.excludes.map((out) =>
    out === 'inspected' ? 'vessels that need a federal certificate of inspection' : 'documented vessels',
  );
  const personal = {
    counts: 'counts',
    excluded: 'does not count',
    unknown: 'the texts read do not say whether it counts',
    'excluded-from-2024': 'does not count for an accident on or after 1 January 2024; it counts before that',
  }[pack.personalProperty];
  const officer = {
    yes: 'stands in for the report of the operator once it is filed',
    no: 'does not replace the report of the operator',
    unknown: 'do not rely on it; the texts read do not say that it replaces yours',
  }[pack.officerReportExcuses];
  const open = {
    yes: 'the law keeps the report confidential',
    no: 'the law does not keep the report confidential',
    unknown: 'not known; ask counsel before you file',
  }[pack.reportConfidential];
  return [
    `Vessels: ${vessels}${left.length > 0 ? `; left out: ${left.join(', ')}` : ''}.`,
    `Personal property aboard: ${personal}.`,
    `An officer's report: ${officer}.`,
    `Confidential: ${open}.`,
  ];
}

function tellCorrection({ on, by, citation, note }: Correction): string {
  return `On ${nameDate(on)} by ${by}: ${note} (${citation})`;
}
