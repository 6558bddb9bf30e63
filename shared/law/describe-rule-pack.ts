import { describeDutyRule } from './describe-duty-rule.js';
import type { RulePack } from './rule-pack.js';
import { LAW_CAUTION, tellCondition, tellRulePack, titleOfNotice, WHO_IS_WHO } from './tell-rule-pack.js';
import { wrapText } from './wrap-text.js';

/**
 * A jurisdiction's law for a manager at a desk, in lines of at most 80 columns (web addresses excepted).
 * @example describeRulePack(texas).startsWith('TEXAS (TX)\n') // true
 */
export function describeRulePack(pack: RulePack): string {
  const told = tellRulePack(pack);
  return [
    `${pack.name.toUpperCase()} (${pack.jurisdiction})`,
    ...(pack.subject === undefined ? ['When a boating accident must be reported'] : []),
    '',
    ...wrapText('  ! ', LAW_CAUTION),
    '',
    ...wrapText('Agency: ', `${pack.agency}.`),
    ...wrapText('Read: ', lowerFirst(told.read)),
    ...(told.inForce === null ? [] : wrapText('In force: ', lowerFirst(told.inForce))),
    ...wrapText('', WHO_IS_WHO),
    ...(pack.subject === undefined
      ? section('WRITTEN ACCIDENT REPORT', describeReport(pack, told.noReport))
      : []),
    ...pack.notices.flatMap((notice) =>
      section(titleOfNotice(notice).toUpperCase(), [
        ...wrapAll('  Only when: ', tellCondition(notice)),
        ...describeDutyRule(notice),
      ]),
    ),
    ...section('WHAT COUNTS', bullets(told.scope)),
    ...section('DUTIES OF A RENTAL BUSINESS FOUND IN THE SAME LAW', bullets(told.livery)),
    ...section(
      'IS IT REPORTABLE AT ALL? ONLY A PERSON ANSWERS',
      told.aids.flatMap(({ question, text }) => [...wrapText('  - ', question), ...wrapText('    ', text)]),
    ),
    ...section('CORRECTED BY THIS BUSINESS', bullets(told.corrections)),
    ...section('WHAT IS NOT KNOWN', bullets(pack.doubts)),
    ...section(
      'SOURCES',
      pack.citations.flatMap(({ section, url }) => [...wrapText('  - ', section), `    ${url}`]),
    ),
    '',
  ].join('\n');
}

function section(title: string, lines: readonly string[]): string[] {
  return lines.length > 0 ? ['', title, ...lines] : [];
}

function describeReport({ report }: RulePack, noReport: string | null): string[] {
  return report === null ? wrapAll('  ', noReport) : describeDutyRule(report);
}

function wrapAll(mark: string, text: string | null): string[] {
  return text === null ? [] : wrapText(mark, text);
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

function bullets(texts: readonly string[]): string[] {
  return texts.flatMap((text) => wrapText('  - ', text));
}
