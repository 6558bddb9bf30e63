import type { Reading } from '../kernel/reading.js';
import { RETENTION_STATES, type RetentionLineState } from '../retention/retention-line.js';
import { words, wholeNumber } from './fleet-values.js';
import { Fact, MayBeAbsent } from './declare-fact.js';
import { PageQueryDto } from './page-query.dto.js';
import { Needed, Value } from './record-members.js';
import { readRecordInput } from './record-reading.js';
import { reason, uuid } from './record-requests.dto.js';
import { day, line, oneOf } from './record-values.js';

const MONTH = 'a month of the list, such as 2024-06';

/** What a manager decides about one line of the list. */
export class RetentionDecisionDto {
  @Needed(words('a kind of what is kept, such as medical', 60))
  kind: string;

  /** Id of the incident, for a kind of an incident. */
  @Value(uuid)
  incident?: string;

  /** For outings and mails. */
  @Value({
    expected: MONTH,
    faultOf: (value) => (/^\d{4}-(0[1-9]|1[0-2])$/.test(String(value)) ? null : `Must be ${MONTH}.`),
    schema: { type: 'string', pattern: '^\\d{4}-(0[1-9]|1[0-2])$' },
  })
  month?: string;

  @Needed(oneOf(['delete', 'keep']))
  decision: 'delete' | 'keep';

  @Needed(reason)
  reason: string;

  /** The last day on which it is kept. */
  @Value(day)
  keepUntil?: string;

  /** The lawyer who directed it, where notes for counsel go. */
  @Value(line)
  counsel?: string;

  @Value(day)
  directedOn?: string;
}

/** A longer time than the form has, by choice of the business. */
export class RetentionPeriodDto {
  @Needed(wholeNumber(1, 1200, 'how many months'))
  months: number;

  @Needed(reason)
  reason: string;
}

export class RetentionQueryDto extends PageQueryDto {
  @MayBeAbsent()
  @Fact(RETENTION_STATES.join(', '), (value) =>
    RETENTION_STATES.includes(value as RetentionLineState)
      ? null
      : `Must be one of ${RETENTION_STATES.join(', ')}.`,
  )
  state?: RetentionLineState;
}

/**
 * Reads a decision: what is decided about is named by an incident or a month, and keeping needs a last day.
 * @example readRetentionDecision({ kind: 'medical', decision: 'keep', reason: 'Asked.' })
 * // { ok: false, errors: [{ pointer: '/incident', … }, { pointer: '/keepUntil', … }] }
 */
export function readRetentionDecision(input: unknown): Reading<RetentionDecisionDto> {
  const reading = readRecordInput(RetentionDecisionDto, input);
  if (!reading.ok) return reading;
  const { incident, month, decision, keepUntil } = reading.value;
  const errors = [
    ...((incident === undefined) === (month === undefined)
      ? [{ pointer: '/incident', detail: 'Name the incident or the month, and one of the two.' }]
      : []),
    ...((decision === 'keep') === (keepUntil === undefined)
      ? [{ pointer: '/keepUntil', detail: 'Name the last day on which it is kept, and only to keep it.' }]
      : []),
  ];
  return errors.length === 0 ? reading : { ok: false, errors };
}
