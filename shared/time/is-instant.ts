import { Temporal } from 'temporal-polyfill';

const SHAPE = /^\d{4}-\d\d-\d\dT\d\d:\d\d.*(?:Z|[+-]\d\d:\d\d)$/;
const DAY = /^(\d{4})-(\d\d)-(\d\d)$/;

/**
 * Whether a text is an instant that can be told as a time. What somebody typed may only look like one.
 * @example isInstant('2026-06-13T11:20:00-05:00') // true; '2026-99-99T11:20:00Z' is words
 */
export function isInstant(text: string): boolean {
  if (!SHAPE.test(text)) return false;
  try {
    Temporal.Instant.from(text);
    return true;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}

/** Whether a text is a day of the calendar: `isDay('2026-06-13')` is true, `isDay('2026-02-31')` is not. */
export function isDay(text: string): boolean {
  const [, year, month, day] = DAY.exec(text) ?? [];
  if (year === undefined) return false;
  const made = new Date(Date.UTC(Number(year), Number(month) - 1, Number(day)));
  return made.toISOString().startsWith(text);
}
