import { describeDutyRule } from './describe-duty-rule.js';
import { BASIS_WORDS, nameDate } from './name-law-terms.js';
import type { Correction, NoticeRule, RulePack } from './rule-pack.js';
import { wrapText } from './wrap-text.js';

const CAUTION =
  'Emergency services first: call 911, or the Coast Guard on VHF channel 16. This page is not legal advice and ' +
  'may be out of date. Before you decide that nothing is due, confirm with the agency and with counsel.';

/** For a rental the customer drives and the business owns: 33 CFR 173.3 and 173.55(c). */
const WHO_IS_WHO =
  'For a rented boat the operator is the customer who had it and the owner is your business.';

/**
 * A jurisdiction's law for a manager at a desk, in lines of at most 80 columns (web addresses excepted).
 * @example describeRulePack(texas).startsWith('TEXAS (TX)\n') // true
 */
export function describeRulePack(pack: RulePack): string {
  return [
    `${pack.name.toUpperCase()} (${pack.jurisdiction})`,
    'When a boating accident must be reported',
    '',
    ...wrapText('  ! ', CAUTION),
    '',
    ...wrapText('Agency: ', `${pack.agency}.`),
    ...describeReading(pack),
    ...wrapText('', WHO_IS_WHO),
    ...section('WRITTEN ACCIDENT REPORT', describeReport(pack)),
    ...pack.notices.flatMap((notice) => section(noticeTitle(notice), describeNotice(notice))),
    ...section('WHAT COUNTS', describeScope(pack)),
    ...section('DUTIES OF A RENTAL BUSINESS FOUND IN THE SAME LAW', describeLivery(pack)),
    ...section('IS IT REPORTABLE AT ALL? ONLY A PERSON ANSWERS', describeAids(pack)),
    ...section('CORRECTED BY THIS BUSINESS', bullets((pack.corrections ?? []).map(correctionWords))),
    ...section('WHAT IS NOT KNOWN', bullets(pack.doubts)),
    ...section(
      'SOURCES',
      pack.citations.flatMap(({ section, url }) => [...wrapText('  - ', section), `    ${url}`]),
    ),
    '',
  ].join('\n');
}

function section(title: string, lines: string[]): string[] {
  return lines.length > 0 ? ['', title, ...lines] : [];
}

function describeReading(pack: RulePack): string[] {
  const edition = pack.asOf ? ` Edition: ${pack.asOf}.` : '';
  if (pack.basis === 'not-read') {
    return wrapText('Read: ', `no text of the law could be read (tried on ${nameDate(pack.readOn)}).`);
  }
  return [
    ...wrapText('Read: ', `on ${nameDate(pack.readOn)}, ${BASIS_WORDS[pack.basis]}.${edition}`),
    ...wrapText('In force: ', `${describeStart(pack)}. For an accident before that, ask the agency.`),
  ];
}

function describeStart({ effectiveFrom, effectiveFromBasis }: RulePack): string {
  const date = nameDate(effectiveFrom);
  return {
    stated: `since ${date}, a date that the sources state`,
    'edition-date': `since ${date} or earlier; that is the date of the edition read`,
    assumed: `taken to be since ${date}, as no better date is known`,
  }[effectiveFromBasis];
}

function describeReport(pack: RulePack): string[] {
  if (pack.report) return describeDutyRule(pack.report);
  if (pack.noWrittenReport) return ['  The law asks no written report of private people.'];
  return wrapText(
    '  ',
    pack.basis === 'not-read'
      ? 'The law was not read, so nothing can be said. That is not "no report": ask the agency now.'
      : 'The texts read show none. That is not "no report": ask the agency now.',
  );
}

function noticeTitle({ id, kind }: NoticeRule): string {
  const title = kind === 'owner-report' ? "owner's report" : kind.replaceAll('-', ' ');
  return `${title}${id === kind ? '' : ` (${id.replaceAll('-', ' ')})`}`.toUpperCase();
}

function describeNotice(notice: NoticeRule): string[] {
  const when = notice.onlyWhen.replace(/\.$/, '');
  const open = notice.condition === null ? '; a person must judge that, no recorded fact decides it' : '';
  return [...(when ? wrapText('  Only when: ', `${when}${open}.`) : []), ...describeDutyRule(notice)];
}

function describeScope(pack: RulePack): string[] {
  if (pack.basis === 'not-read') return [];
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
  return bullets([
    `Vessels: ${vessels}${left.length > 0 ? `; left out: ${left.join(', ')}` : ''}.`,
    `Personal property aboard: ${personal}.`,
    `An officer's report: ${officer}.`,
    `Confidential: ${open}.`,
  ]);
}

function describeLivery(pack: RulePack): string[] {
  return pack.liveryDuties.flatMap(({ summary, citation, basis }) =>
    wrapText('  - ', `${summary} (${citation}; read ${BASIS_WORDS[basis]}.)`),
  );
}

function correctionWords({ on, by, citation, note }: Correction): string {
  return `On ${nameDate(on)} by ${by}: ${note} (${citation})`;
}

function describeAids({ aids = [] }: RulePack): string[] {
  return aids.flatMap(({ question, text, source, basis, notKnown }) => [
    ...wrapText('  - ', question),
    ...wrapText('    ', `${text} (${source}; read ${BASIS_WORDS[basis]}.) Not known: ${notKnown}`),
  ]);
}

function bullets(texts: readonly string[]): string[] {
  return texts.flatMap((text) => wrapText('  - ', text));
}
