import type { ScopeAnswer } from '../record/incident-facts.js';
import { Fact, ListOf, OneOf, textFault } from './declare-fact.js';
import { InstantFact } from './declare-instant.js';

const JURISDICTION = /^us(-[a-z]{2})?$/;

function reasonFault(value: unknown): string | null {
  return textFault(value) ?? (String(value).trim() === '' ? 'Must say something.' : null);
}

function jurisdictionFault(value: unknown): string | null {
  return typeof value === 'string' && JURISDICTION.test(value)
    ? null
    : 'Must be us, or us- with a postal code in small letters.';
}

/** A person's answer to the question whether it is a reportable occurrence at all. */
export class ScopeAnswerDto implements ScopeAnswer {
  @Fact('the id of an aid', reasonFault)
  aid: string;

  @ListOf('jurisdictions, such as us and us-tx', jurisdictionFault)
  jurisdictions: string[];

  @OneOf(['reportable', 'not-reportable'])
  answer: ScopeAnswer['answer'];

  @Fact('the reason', reasonFault)
  reason: string;

  @Fact('who answered', reasonFault)
  by: string;

  @InstantFact()
  at: string;
}
