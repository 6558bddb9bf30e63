import type { FieldError } from '../kernel/field-error.js';
import { isStateCode } from '../place/state-codes.js';
import { checkDutyRule } from './check-duty-rule.js';
import { packCode } from './pack-code.js';
import type { RulePack } from './rule-pack.js';

/**
 * Cross checks of a pack that already fits `forms/law/rule-pack.schema.json`: what a schema cannot say. An
 * empty list means that the pack may be used.
 * @param fileName the file it was read from, without folders
 * @example checkRulePack({ ...texas, jurisdiction: 'OK' }, 'tx.json')
 * // [{ pointer: '/jurisdiction', detail: 'a pack for OK belongs in ok.json, not in tx.json' }]
 */
export function checkRulePack(pack: RulePack, fileName: string): FieldError[] {
  return [
    ...checkJurisdiction(pack, fileName),
    ...checkScope(pack),
    ...(pack.report ? checkDutyRule(pack.report, ['report']) : []),
    ...pack.notices.flatMap((notice, i) => checkDutyRule(notice, ['notices', i])),
    ...checkNoticeIds(pack),
  ];
}

function checkJurisdiction(pack: RulePack, fileName: string): FieldError[] {
  const code = pack.jurisdiction;
  const itsFile = `${packCode(pack).toLowerCase()}.json`;
  const errors: FieldError[] = [];
  if (code !== 'US' && !isStateCode(code)) {
    errors.push({ pointer: '/jurisdiction', detail: `'${code}' is neither a USPS code nor US` });
  }
  if (itsFile !== fileName) {
    errors.push({
      pointer: '/jurisdiction',
      detail: `a pack for ${packCode(pack)} belongs in ${itsFile}, not in ${fileName}`,
    });
  }
  return errors;
}

const OTHER_SCOPES: readonly RulePack['appliesTo'][] = [
  'employer',
  'federal-waters',
  'commercial-service',
  'rented-out',
];

function checkScope(pack: RulePack): FieldError[] {
  const errors: FieldError[] = [];
  const isOther = pack.subject !== undefined;
  if (isOther !== OTHER_SCOPES.includes(pack.appliesTo)) {
    errors.push({
      pointer: '/appliesTo',
      detail: `${OTHER_SCOPES.join(', ')} are for packs with a subject, and only those`,
    });
  } else if (!isOther && (pack.appliesTo === 'federal-scope') !== (pack.jurisdiction === 'US')) {
    errors.push({ pointer: '/appliesTo', detail: 'federal-scope is for the federal pack, and only that' });
  }
  if (pack.noWrittenReport && pack.report) {
    errors.push({ pointer: '/noWrittenReport', detail: 'cannot be true beside a report' });
  }
  if (isOther && pack.report) {
    errors.push({ pointer: '/report', detail: 'a pack with a subject has notices only' });
  }
  pack.notices.forEach(({ raisedBy }, i) => {
    if (isOther === (raisedBy !== undefined)) return;
    const detail = isOther ? 'is missing: say what calls the duty up' : 'is for packs with a subject';
    errors.push({ pointer: `/notices/${i}/raisedBy`, detail });
  });
  if (pack.basis === 'not-read') {
    if (pack.report) errors.push({ pointer: '/report', detail: 'a pack that was not read has no report' });
    if (pack.notices.length > 0) {
      errors.push({ pointer: '/notices', detail: 'a pack that was not read has no notices' });
    }
  }
  return errors;
}

/** An id names the duty in every determination that is ever stored, so it must be one duty's alone. */
function checkNoticeIds(pack: RulePack): FieldError[] {
  return pack.notices.flatMap((notice, i) =>
    pack.notices.findIndex((other) => other.id === notice.id) < i
      ? [{ pointer: `/notices/${i}/id`, detail: `'${notice.id}' is taken by an earlier notice` }]
      : [],
  );
}
