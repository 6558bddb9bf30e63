/**
 * The same day of the month so many months later, or the last of that month where it has no such day.
 * @param date ISO date
 * @example monthsAfter('2026-08-31', 6) // '2027-02-28'
 */
export function monthsAfter(date: string, months: number): string {
  const [year = 0, month = 1, day = 1] = date.split('-').map(Number);
  const last = new Date(Date.UTC(year, month + months, 0)).getUTCDate();
  return new Date(Date.UTC(year, month - 1 + months, Math.min(day, last))).toISOString().slice(0, 10);
}
