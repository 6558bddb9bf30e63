import { isDateTime } from './check-date-time.js';
import { Fact } from './declare-fact.js';

const LONGEST_LINE = 200;

/** One line of text that says something: no line breaks, no control characters, not only spaces. */
export function LineFact(what: string, longest = LONGEST_LINE): PropertyDecorator {
  const expected = `${what}: one line of at most ${longest} characters`;
  return Fact(expected, (value) =>
    typeof value === 'string' &&
    value.length <= longest &&
    /^[^\p{Cc}\p{Zl}\p{Zp}]*[^\p{C}\p{Z}][^\p{Cc}\p{Zl}\p{Zp}]*$/u.test(value)
      ? null
      : `Must be ${expected}.`,
  );
}

/** A text of several lines. */
export function LinesFact(what: string, longest: number): PropertyDecorator {
  const expected = `${what}: at most ${longest} characters`;
  return Fact(expected, (value) =>
    typeof value === 'string' && value.length <= longest && value.trim() !== ''
      ? null
      : `Must be ${expected}.`,
  );
}

/** The id of something that the service made. */
export function IdOf(what: string): PropertyDecorator {
  const expected = `the id of ${what}, as the service gave it`;
  return Fact(expected, (value) =>
    typeof value === 'string' && /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/.test(value)
      ? null
      : `Must be ${expected}.`,
  );
}

const DAY = 'a day of the calendar, such as 2026-06-13';

/** A day that exists; in which zone it is a day is for the reader to know. */
export function DayFact(): PropertyDecorator {
  return Fact(DAY, (value) =>
    typeof value === 'string' && /^\d{4}-\d\d-\d\d$/.test(value) && isDateTime(`${value}T00:00:00Z`)
      ? null
      : `Must be ${DAY}.`,
  );
}
