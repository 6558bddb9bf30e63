import { valueOf } from '../call/known.js';
import { readConsequence } from '../law/read-consequence.js';
import type { IncidentRecord } from '../record/incident-record.js';
import { recordToFacts } from '../record/record-to-facts.js';
import { whenItHappened } from '../record/when-it-happened.js';
import type { ReportHead } from './filled-report.js';
import { type Driver, operatorsOf } from './find-operators.js';
import type { NoticeDuty } from './compose-notice.js';
import type { NoticeRecipient } from './renter-notice.js';

export type NoticeRefusal = 'BEREAVED' | 'NOT_RULED_OUT' | 'NO_CUSTOMER' | 'NO_CRAFT' | 'NOTHING_DUE';

/** Whether a notice is given, to whom, and what to mind; or why there is none. */
export type NoticeJudgement =
  | {
      readonly ok: true;
      readonly recipient: NoticeRecipient;
      readonly name: string | null;
      readonly minds: readonly string[];
    }
  | { readonly ok: false; readonly code: NoticeRefusal; readonly detail: string };

/** In most states; some have 19 or 21 (memory), so that the paper of somebody near it is for a person to judge. */
const OF_AGE_YEARS = 18;

const refuse = (code: NoticeRefusal, detail: string): NoticeJudgement => ({ ok: false, code, detail });

/**
 * Whether the customer who drove a craft is given the notice of the duty to report. A family that has lost somebody, or
 * may have, is given none: renters are often family of those they rode with.
 * @example judgeNotice(recordOfADeath, head, duties) // { ok: false, code: 'BEREAVED', … }
 */
export function judgeNotice(
  record: IncidentRecord,
  head: ReportHead,
  duties: readonly NoticeDuty[],
): NoticeJudgement {
  if (head.craft === null) return refuse('NO_CRAFT', 'No craft is named: say first which one it was.');
  if (!head.customerWrites) {
    return refuse(
      'NO_CUSTOMER',
      'The notice is for a customer who drove: take the operator’s report of the craft.',
    );
  }
  const { died, missing } = readConsequence(recordToFacts(record), false);
  if (died === 'yes' || missing === 'yes') {
    return refuse(
      'BEREAVED',
      'Somebody died or is missing: the family gets no notice. Counsel says what is written to them.',
    );
  }
  if (died !== 'no' || missing !== 'no') {
    return refuse(
      'NOT_RULED_OUT',
      'It is not ruled out that somebody died or is missing: call, and hand out no paper until everybody concerned is ' +
        'listed with what became of them.',
    );
  }
  if (duties.every(({ outcome }) => outcome === 'not-required')) {
    return refuse('NOTHING_DUE', 'No report of the operator is due on what is known.');
  }
  const drivers = operatorsOf(head.craft, record.sections);
  const [driver] = drivers;
  const underAge = drivers.some((one) => isUnderAge(one, record));
  return {
    ok: true,
    recipient: underAge ? 'guardian' : 'operator',
    name: driver?.name ?? null,
    minds: [
      'Assume that the other side will read this page.',
      ...(driver === undefined ? ['Nobody recorded who drove: make sure who is given the page.'] : []),
      ...(driver !== undefined && !underAge && !ageKnown(driver)
        ? ['Nobody recorded how old the operator is: of somebody under age the parent or guardian is told.']
        : []),
      ...(drivers.length > 1 ? ['More than one person drove: each is told.'] : []),
    ],
  };
}

function ageKnown({ age, birthDate }: Driver): boolean {
  return age !== undefined || birthDate !== undefined;
}

function isUnderAge({ minor, age, birthDate }: Driver, record: IncidentRecord): boolean {
  if (minor !== undefined) return true;
  const said = valueOf(age);
  if (said !== undefined) return said < OF_AGE_YEARS;
  const born = valueOf(birthDate);
  if (born === undefined) return false;
  const comesOfAge = `${Number(born.slice(0, 4)) + OF_AGE_YEARS}${born.slice(4)}`;
  return whenItHappened(record).occurredAt.slice(0, 10) < comesOfAge;
}
