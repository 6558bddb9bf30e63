import type { Reading } from '../kernel/reading.js';
import type { ScopeAnswer } from '../record/incident-facts.js';
import { jurisdiction } from './decision-values.js';
import { account, words } from './fleet-values.js';
import { Needed } from './record-members.js';
import { readRecordInput } from './record-reading.js';
import { listOf, oneOf } from './record-values.js';

/** An answer as it is sent: who signs it and when, the service knows. */
export class ScopeAnswerRequestDto implements Omit<ScopeAnswer, 'by' | 'at'> {
  @Needed(words('the id of an aid of the determination', 60))
  aid: string;

  @Needed(listOf(jurisdiction, 'jurisdictions, such as us and us-tx'))
  jurisdictions: string[];

  @Needed(oneOf(['reportable', 'not-reportable'] as const))
  answer: ScopeAnswer['answer'];

  @Needed(account('the reason', 2000))
  reason: string;
}

export function readScopeAnswer(input: unknown): Reading<ScopeAnswerRequestDto> {
  return readRecordInput(ScopeAnswerRequestDto, input);
}
