import { DECISION_KINDS, type DecisionKind, type Signing } from '../decision/decision.js';
import type { ReportKey } from '../decision/owed-report.js';
import type { Reading } from '../kernel/reading.js';
import { definedMembers } from '../record/defined-members.js';
import { craftId, dutyId } from './decision-values.js';
import { wordFault } from './declare-fact.js';
import { account, wholeNumber, words } from './fleet-values.js';
import { isObject } from './is-object.js';
import { Needed, Value, type Shape, type ValueRule } from './record-members.js';
import { readRecordInput } from './record-reading.js';
import { instant, listOf, oneOf } from './record-values.js';

const kind = (word: DecisionKind): ValueRule => oneOf([word]);
const version = wholeNumber(1, 2_147_483_647, 'the version of the determination');
const reason = account('the reason', 2000);

/** Report now, on what is known, and supplement it later. */
export class SignReportDto {
  @Needed(kind('report'))
  kind: 'report';

  /** Version of the determination that was read: on another one nothing is signed. */
  @Needed(version)
  determination: number;

  @Needed(dutyId)
  duty: string;

  @Value(craftId)
  vessel?: string;

  @Value(reason)
  reason?: string;
}

/** Wait for named answers until a time. */
export class SignWaitDto {
  @Needed(kind('wait'))
  kind: 'wait';

  /** Version of the determination that was read: on another one nothing is signed. */
  @Needed(version)
  determination: number;

  @Needed(dutyId)
  duty: string;

  @Value(craftId)
  vessel?: string;

  @Needed(instant)
  until: string;

  @Needed(listOf(words('what is waited for', 500), 'questions'))
  questions: string[];
}

/** No report due on the facts as of the time of signing. */
export class SignNoReportDto {
  @Needed(kind('no-report'))
  kind: 'no-report';

  /** Version of the determination that was read: on another one nothing is signed. */
  @Needed(version)
  determination: number;

  @Needed(dutyId)
  duty: string;

  @Value(craftId)
  vessel?: string;

  @Value(reason)
  reason?: string;

  /** Name of the lawyer who was asked. */
  @Value(words('the name of counsel', 200))
  counsel?: string;
}

type SignDto = SignReportDto | SignWaitDto | SignNoReportDto;

/** The classes of what may be signed, by kind. */
export const SIGNING_SHAPES: Readonly<Record<DecisionKind, Shape>> = {
  report: SignReportDto,
  wait: SignWaitDto,
  'no-report': SignNoReportDto,
};

/** What somebody signs, on which report of which determination. */
export interface SentSigning {
  readonly key: ReportKey;
  readonly determination: number;
  readonly signing: Signing;
}

const kindFault = wordFault(DECISION_KINDS, `one of ${DECISION_KINDS.join(', ')}`);

/**
 * Reads what somebody signs by the class of its kind.
 * @example readSigning({ kind: 'report', determination: 3, duty: 'us/accident-report', vessel: 'PWC 7' })
 * // { ok: true, value: { key: { duty: 'us/accident-report', vessel: 'PWC 7' }, determination: 3, signing: { kind: 'report' } } }
 */
export function readSigning(input: unknown): Reading<SentSigning> {
  const sent = isObject(input) && Object.hasOwn(input, 'kind') ? input['kind'] : undefined;
  const fault = kindFault(sent);
  if (fault !== null) return { ok: false, errors: [{ pointer: '/kind', detail: fault }] };
  const reading = readRecordInput(SIGNING_SHAPES[sent as DecisionKind], input);
  if (!reading.ok) return reading;
  const dto = reading.value as SignDto;
  const key = { duty: dto.duty, vessel: dto.vessel ?? null };
  return { ok: true, value: { key, determination: dto.determination, signing: signingOf(dto) } };
}

function signingOf(dto: SignDto): Signing {
  switch (dto.kind) {
    case 'report':
      return definedMembers<Signing>({ kind: dto.kind, reason: dto.reason });
    case 'wait':
      return { kind: dto.kind, until: dto.until, questions: dto.questions };
    case 'no-report':
      return definedMembers<Signing>({ kind: dto.kind, reason: dto.reason, counsel: dto.counsel });
  }
}
