/**
 * What the clocks of a zone showed at an instant, to the second, as a date that has it in UTC: spreadsheets take it
 * from there.
 * @example wallClock('2026-06-13T16:20:00Z', 'America/Chicago').toISOString() // '2026-06-13T11:20:00.000Z'
 */
export function wallClock(instant: string, timeZone: string): Date {
  const parts = formatFor(timeZone).formatToParts(new Date(instant));
  const part = (type: Intl.DateTimeFormatPartTypes): number =>
    Number(parts.find((one) => one.type === type)?.value);
  return new Date(
    Date.UTC(part('year'), part('month') - 1, part('day'), part('hour'), part('minute'), part('second')),
  );
}

const formats = new Map<string, Intl.DateTimeFormat>();

/** Making one takes far longer than using it. */
function formatFor(timeZone: string): Intl.DateTimeFormat {
  const kept = formats.get(timeZone);
  if (kept !== undefined) return kept;
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone,
    hourCycle: 'h23',
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    second: '2-digit',
  });
  formats.set(timeZone, format);
  return format;
}
