import type { FieldError } from '../kernel/field-error.js';
import type { Reading } from '../kernel/reading.js';
import { account, cents, mail, phone, readFleetInput, words } from './fleet-values.js';
import { Needed, Value } from './record-members.js';
import { uuid } from './record-requests.dto.js';
import { day, listOf } from './record-values.js';

/** An insurance policy, as far as an incident asks for it. */
export class PolicyDto {
  @Needed(words('the number of the policy', 80))
  number: string;

  @Needed(words('the insurer', 120))
  insurer: string;

  /** Hull, liability, or both, in its own words. */
  @Value(words('what it covers', 200))
  covers?: string;

  /** The first day, and the last one on which it holds at any hour. */
  @Needed(day)
  firstDay: string;

  @Needed(day)
  lastDay: string;

  @Needed(listOf(uuid, 'ids of craft'))
  scheduledCraft: string[];

  /** Where a loss is told first. */
  @Value(phone)
  noticePhone?: string;

  @Value(mail)
  noticeMail?: string;

  /** Within which time, to whom, with what: as the policy words it. */
  @Value(account('what the policy asks of a notice', 4000))
  noticeTerms?: string;

  @Value(cents)
  deductibleCents?: number;

  /** Cancelled, or replaced by another. */
  @Value(day)
  retiredOn?: string;
}

/** Days are compared as text, which is their order. */
export function readPolicy(input: unknown): Reading<PolicyDto> {
  return readFleetInput(PolicyDto, input, ({ firstDay, lastDay }): FieldError[] =>
    lastDay < firstDay ? [{ pointer: '/lastDay', detail: 'Must not be before the first day.' }] : [],
  );
}
