import { isDateTime } from './check-date-time.js';
import { Fact } from './declare-fact.js';

const EXPECTED = 'an instant with its offset, such as 2026-06-13T11:20:00-05:00 (RFC 3339)';

/** An instant as text, with an offset or `Z`, on a day that exists. */
export function InstantFact(): PropertyDecorator {
  return Fact(EXPECTED, (value) =>
    typeof value === 'string' && isDateTime(value) ? null : `Must be ${EXPECTED}.`,
  );
}
