import { Temporal } from 'temporal-polyfill';

const HOURS_24_MS = 86_400_000;
const SATURDAY = 6;

/** Civil time in one zone. Instants are milliseconds since the Unix epoch. */
export interface ZoneClock {
  /** IANA name or fixed offset. */
  readonly zone: string;
  /** With the offset in force at that instant: `2026-06-23T11:20:00-05:00`. */
  format(instant: number): string;
  /** `2026-06-23`. */
  localDate(instant: number): string;
  /** The next local midnight after the instant. */
  nextMidnight(instant: number): number;
  /** The same wall-clock time `days` calendar days later; one that does not exist takes the earlier instant. */
  plusCalendarDays(instant: number, days: number): number;
  /** The same wall-clock time after `days` working days: Saturdays, Sundays and the named holidays are skipped. */
  plusBusinessDays(instant: number, days: number, holidays: readonly string[]): number;
}

/**
 * Clock of a zone, for example `zoneClock('America/Chicago')` or `zoneClock('-05:00')`.
 * @throws RangeError for a zone that is neither.
 */
export function zoneClock(zone: string): ZoneClock {
  const zoned = remember((instant: number) =>
    Temporal.Instant.fromEpochMilliseconds(instant).toZonedDateTimeISO(zone),
  );
  const atWallClock = (from: Temporal.ZonedDateTime, date: Temporal.PlainDate): number =>
    date.toPlainDateTime(from.toPlainTime()).toZonedDateTime(zone, { disambiguation: 'earlier' })
      .epochMilliseconds;
  zoned(0);
  return {
    zone,
    format: remember((instant: number) =>
      zoned(instant).toString({
        timeZoneName: 'never',
        fractionalSecondDigits: instant % 1000 === 0 ? 0 : 3,
      }),
    ),
    localDate: (instant) => zoned(instant).toPlainDate().toString(),
    nextMidnight: (instant) =>
      zoned(instant).toPlainDate().add({ days: 1 }).toZonedDateTime(zone).epochMilliseconds,
    plusCalendarDays: remember((instant: number, days: number) => {
      const from = zoned(instant);
      return atWallClock(from, from.toPlainDate().add({ days }));
    }),
    plusBusinessDays(instant, days, holidays) {
      const from = zoned(instant);
      let date = from.toPlainDate();
      for (let counted = 0; counted < days;) {
        date = date.add({ days: 1 });
        if (date.dayOfWeek < SATURDAY && !holidays.includes(date.toString())) counted += 1;
      }
      return atWallClock(from, date);
    },
  };
}

/** Elapsed hours. `plusHours(0, 48)` is `172800000`. */
export function plusHours(instant: number, hours: number): number {
  return instant + hours * (HOURS_24_MS / 24);
}

/** One determination asks for the same few instants again and again, and zone arithmetic is what costs. */
function remember<A extends readonly number[], T>(compute: (...args: A) => T): (...args: A) => T {
  const known = new Map<string, T>();
  return (...args) => {
    const key = args.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    const value = compute(...args);
    known.set(key, value);
    return value;
  };
}
