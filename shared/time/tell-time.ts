const DAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];
const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
];
const MINUTE_MS = 60_000;
const HOUR_MINUTES = 60;
const DAY_MINUTES = 24 * HOUR_MINUTES;

/**
 * An instant as the wall clock at its own offset shows it, with the year only where it is not this one.
 * @example localTime('2026-07-08T14:30:00-05:00', Date.UTC(2026, 6, 7)) // 'Wed 8 July 14:30'
 */
export function localTime(instant: string, now: number): string {
  const [year = 0, month = 1, day = 1] = instant.slice(0, 10).split('-').map(Number);
  const weekday = DAYS[new Date(Date.UTC(year, month - 1, day)).getUTCDay()] ?? '';
  const shownYear = year === new Date(now).getUTCFullYear() ? '' : ` ${year}`;
  return `${weekday} ${day} ${MONTHS[month - 1] ?? ''}${shownYear} ${instant.slice(11, 16)}`;
}

/**
 * A calendar day in words; anything else as it is.
 * @example tellDay('1994-03-09') // '9 March 1994'
 */
export function tellDay(day: string): string {
  const [, year, month, date] = /^(\d{4})-(\d\d)-(\d\d)$/.exec(day) ?? [];
  const name = MONTHS[Number(month) - 1];
  return name === undefined ? day : `${Number(date)} ${name} ${year ?? ''}`;
}

/**
 * What is left until an instant, rounded down so that nobody is promised a minute too many.
 * @example timeLeft('2026-07-08T14:30:00-05:00', Date.parse('2026-07-07T00:12:00Z')) // '1 day 19 h left'
 */
export function timeLeft(instant: string, now: number): string {
  const minutes = Math.floor((Date.parse(instant) - now) / MINUTE_MS);
  return minutes < 0 ? `overdue by ${spanOf(-minutes)}` : `${spanOf(minutes)} left`;
}

function spanOf(minutes: number): string {
  const days = Math.floor(minutes / DAY_MINUTES);
  const hours = Math.floor((minutes % DAY_MINUTES) / HOUR_MINUTES);
  if (days > 0) return `${days} ${days === 1 ? 'day' : 'days'}${hours > 0 ? ` ${hours} h` : ''}`;
  return hours > 0 ? `${hours} h ${minutes % HOUR_MINUTES} min` : `${minutes} min`;
}
