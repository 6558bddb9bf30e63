/**
 * The last day of a period: the same day of the month so many months later. Where that month has no such day, the first
 * of the next, since nothing may go a day early.
 * @param day ISO date
 * @example endOfPeriod('2024-02-29', 12) // '2025-03-01'
 */
export function endOfPeriod(day: string, months: number): string {
  const [year = 0, month = 1, date = 1] = day.split('-').map(Number);
  const end = new Date(Date.UTC(year, month - 1 + months, 1));
  const length = new Date(Date.UTC(end.getUTCFullYear(), end.getUTCMonth() + 1, 0)).getUTCDate();
  if (date > length) end.setUTCMonth(end.getUTCMonth() + 1);
  else end.setUTCDate(date);
  return end.toISOString().slice(0, 10);
}

/**
 * The day on which somebody comes of age; who was born on 29 February does so on 1 March of other years.
 * @example comesOfAgeOn('2008-02-29', 18) // '2026-03-01'
 */
export function comesOfAgeOn(birthDate: string, years: number): string {
  return endOfPeriod(birthDate, years * 12);
}

/** `laterDay('2026-03-01', '2025-12-31')` is `'2026-03-01'`. */
export function laterDay(one: string, other: string): string {
  return one > other ? one : other;
}
