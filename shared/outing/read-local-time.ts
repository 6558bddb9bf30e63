import { Temporal } from 'temporal-polyfill';

const WITH_OFFSET = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2}(\.\d{1,9})?)?(Z|[+-]\d{2}:\d{2})$/;
const DAY_AND_TIME = /^(?:(\d{4})-(\d{1,2})-(\d{1,2})|(\d{1,2})\/(\d{1,2})\/(\d{4}))[ T]+(.+)$/;
const TIME = /^(\d{1,2})(?::(\d{2})(?::(\d{2}))?)?\s*(?:([ap])\.?m\.?)?$/i;

export type TimeReading = { readonly ok: true; readonly at: string } | { readonly ok: false; detail: string };

const ASK =
  'Write it as 2026-06-13 14:30, 6/13/2026 2:30 pm (month first), 14:30 for the day of the list, or with an offset.';

/**
 * A time as a list from a spreadsheet has it, read on the clock of a zone: RFC 3339 in UTC comes out. A time that comes
 * twice, as clocks go back, is the earlier one, so that a craft is late sooner; one that does not exist is refused.
 * @param day the day that a time alone belongs to, such as 2026-06-13
 * @example readLocalTime('2:30 pm', '2026-06-13', 'America/Chicago') // { ok: true, at: '2026-06-13T19:30:00.000Z' }
 */
export function readLocalTime(text: string, day: string, zone: string): TimeReading {
  const words = text.trim();
  if (WITH_OFFSET.test(words)) return instantOf(() => Temporal.Instant.from(words), ASK);
  const dated = DAY_AND_TIME.exec(words);
  const [, year, month, dayOfMonth, usMonth, usDay, usYear] = dated ?? [];
  const time = timeOf((dated?.[7] ?? words).trim());
  if (time === null) return { ok: false, detail: ASK };
  return instantOf(() => {
    const date =
      dated === null
        ? Temporal.PlainDate.from(day)
        : Temporal.PlainDate.from(
            {
              year: Number(year ?? usYear),
              month: Number(month ?? usMonth),
              day: Number(dayOfMonth ?? usDay),
            },
            { overflow: 'reject' },
          );
    const wall = date.toPlainDateTime(Temporal.PlainTime.from(time, { overflow: 'reject' }));
    const zoned = wall.toZonedDateTime(zone, { disambiguation: 'earlier' });
    if (!zoned.toPlainDateTime().equals(wall)) throw new RangeError('Clocks skip this time.');
    return zoned.toInstant();
  }, 'There is no such time on the clock of the station: correct it.');
}

/** Null for what is no time; `2` alone could be morning or afternoon, and is none. */
function timeOf(words: string): { hour: number; minute: number; second: number } | null {
  const found = TIME.exec(words);
  if (found === null) return null;
  const [, hours, minutes, seconds, half] = found;
  const hour = Number(hours);
  if (half === undefined && minutes === undefined) return null;
  if (half !== undefined && (hour < 1 || hour > 12)) return null;
  return {
    hour: half === undefined ? hour : (hour % 12) + (half.toLowerCase() === 'p' ? 12 : 0),
    minute: Number(minutes ?? 0),
    second: Number(seconds ?? 0),
  };
}

function instantOf(read: () => Temporal.Instant, refusal: string): TimeReading {
  try {
    return { ok: true, at: new Date(read().epochMilliseconds).toISOString() };
  } catch (error) {
    if (error instanceof RangeError) return { ok: false, detail: refusal };
    throw error;
  }
}
