import { plusHours, type ZoneClock } from './zone-clock.js';

/** A period that a law sets, from an instant on. */
export type Period =
  | { readonly hours: number }
  | { readonly days: number; readonly dayKind: 'plain' | 'business' }
  | { readonly immediate: true };

/**
 * When a period that starts at `start` ends (both in epoch milliseconds).
 *
 * Hours are elapsed hours. Plain days have two fair readings, n times 24 elapsed hours and the same
 * wall-clock time n calendar days later; the earlier is taken, so that nobody is late under either. Across
 * the spring change, ten days from 9 March 2024 14:00 in New York end on 19 March at 14:00, not 15:00.
 * Business days skip Saturdays, Sundays and the named holidays. "Immediate" ends when it starts.
 */
export function limitEnd(
  start: number,
  period: Period,
  clock: ZoneClock,
  holidays: readonly string[] = [],
): number {
  if ('immediate' in period) return start;
  if ('hours' in period) return plusHours(start, period.hours);
  if (period.dayKind === 'business') return clock.plusBusinessDays(start, period.days, holidays);
  return Math.min(plusHours(start, 24 * period.days), clock.plusCalendarDays(start, period.days));
}
