/** `2026-06-13T11:20:00-05:00`: date, time, up to nine decimals of a second, and `Z` or an offset. */
const DATE_TIME =
  /^(\d{4})-(\d\d)-(\d\d)[Tt ](\d\d):(\d\d):(\d\d)(?:\.\d{1,9})?(?:[Zz]|([+-])(\d\d)(?::?(\d\d))?)$/;

const MINUTES_A_DAY = 1440;

/**
 * Whether a text is an instant that has an offset and lies in the calendar (RFC 3339, section 5.6).
 * @example isDateTime('2026-06-13T11:20:00-05:00') // true
 * @example isDateTime('2026-02-30T11:20:00Z') // false: no such day
 * @example isDateTime('2026-06-13T11:20:00') // false: no offset
 *
 * Lower-case `t` and `z`, one space instead of `T`, and offsets without colon or minutes are accepted, as
 * the usual schema validators accept them. A leap second counts only in the last minute of a UTC day. The
 * hour 24, other white space and a tenth decimal are refused: clocks could not be computed from them.
 */
export function isDateTime(text: string): boolean {
  const parts = DATE_TIME.exec(text);
  if (parts === null) return false;
  const [year, month, day, hour, minute, second] = parts.slice(1, 7).map(Number) as NumberParts;
  const [offsetHour, offsetMinute] = [Number(parts[8] ?? 0), Number(parts[9] ?? 0)];
  if (day < 1 || day > daysIn(year, month) || hour > 23 || minute > 59) return false;
  if (offsetHour > 23 || offsetMinute > 59) return false;
  if (second < 60) return true;
  const offset = (parts[7] === '-' ? -1 : 1) * (offsetHour * 60 + offsetMinute);
  const utcMinute = (hour * 60 + minute - offset + MINUTES_A_DAY) % MINUTES_A_DAY;
  return second === 60 && utcMinute === MINUTES_A_DAY - 1;
}

type NumberParts = [number, number, number, number, number, number];

/** Days of a month; 0 for a month that does not exist. */
function daysIn(year: number, month: number): number {
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  return [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1] ?? 0;
}
