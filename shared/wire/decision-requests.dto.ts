import {
  FILERS,
  FILING_FORMS,
  FILING_WAYS,
  type Filer,
  type FilingDetails,
  type FilingForm,
  type FilingWay,
} from '../decision/filing.js';
import { SAYS_FILED, type SaysFiled } from '../decision/operator-notice.js';
import { craftId, dutyIds, jurisdiction, reportKeys } from './decision-values.js';
import { account, words } from './fleet-values.js';
import { Needed, Value } from './record-members.js';
import type { Reading } from '../kernel/reading.js';
import { readRecordInput } from './record-reading.js';
import { uuid } from './record-requests.dto.js';
import { instant, oneOf } from './record-values.js';

const person = words('the name of a person', 200);
const remark = account('a remark', 2000);

/** A report or notice that was made. */
export class FilingDto {
  @Needed(oneOf(FILING_FORMS))
  form: FilingForm;

  /** When it was made. */
  @Needed(instant)
  at: string;

  @Needed(oneOf(FILING_WAYS))
  way: FilingWay;

  @Needed(words('the authority that it was made to', 300))
  to: string;

  /** Of that authority. */
  @Needed(jurisdiction)
  jurisdiction: string;

  @Needed(oneOf(FILERS))
  filedBy: Filer;

  @Needed(person)
  filer: string;

  @Value(words('how the authority confirmed it', 300))
  confirmation?: string;

  /** Id of the copy among the evidence. */
  @Value(words('the id of the copy among the evidence', 100))
  copy?: string;

  @Value(remark)
  remark?: string;

  @Needed(reportKeys)
  satisfies: { duty: string; vessel?: string | null }[];

  /** Id of a filing that was recorded wrongly; the remark says what was wrong. */
  @Value(uuid)
  replaces?: string;
}

/** That somebody told the operator of the duty to report, or did not, and what the operator says. */
export class OperatorNoticeDto {
  @Value(craftId)
  vessel?: string;

  @Needed(instant)
  at: string;

  @Needed(oneOf(['yes', 'no']))
  told: 'yes' | 'no';

  /** Who told them, or who knows that nobody did. */
  @Needed(person)
  toldBy: string;

  @Value(words('the way, such as in person', 100))
  way?: string;

  @Needed(oneOf(SAYS_FILED))
  saysFiled: SaysFiled;

  /** When, by the operator's word. */
  @Value(instant)
  filedAt?: string;

  @Value(words('the confirmation that the operator names', 300))
  confirmation?: string;

  @Value(account('what was said', 4000))
  words?: string;
}

/** A call to the agency or to counsel about what the law asks. */
export class LegalCallDto {
  @Needed(instant)
  at: string;

  @Needed(oneOf(['agency', 'counsel']))
  with: 'agency' | 'counsel';

  @Needed(words('the name, and the office or firm', 300))
  who: string;

  /** The answer about the duty alone: advice of counsel belongs among the privileged notes. */
  @Needed(account('what was said about the duty', 4000))
  said: string;

  @Needed(dutyIds)
  duties: string[];
}

/**
 * Reads a filing; a report that names no craft has `vessel` null.
 * @example readFiling({ …, satisfies: [{ duty: 'us/accident-report' }] })
 * // { ok: true, value: { …, satisfies: [{ duty: 'us/accident-report', vessel: null }] } }
 */
export function readFiling(input: unknown): Reading<FilingDetails> {
  const reading = readRecordInput(FilingDto, input);
  if (!reading.ok) return reading;
  const satisfies = reading.value.satisfies.map(({ duty, vessel = null }) => ({ duty, vessel }));
  return { ok: true, value: { ...reading.value, satisfies } };
}

/** Reads a call; it has to be about at least one duty. */
export function readLegalCall(input: unknown): Reading<LegalCallDto> {
  const reading = readRecordInput(LegalCallDto, input);
  if (!reading.ok || reading.value.duties.length > 0) return reading;
  return { ok: false, errors: [{ pointer: '/duties', detail: 'Name the duties that it was about.' }] };
}
