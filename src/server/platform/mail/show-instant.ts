/** @throws TypeError for anything but an IANA zone */
export function assertTimeZone(timeZone: string): void {
  if (!/^[A-Za-z0-9_+/-]{1,64}$/.test(timeZone)) throw new TypeError('A mail shows times in an IANA zone.');
}

/**
 * An instant as people read it.
 * @throws TypeError for anything but an instant
 * @example showInstant('2026-06-13T16:20:00.000Z', 'America/Chicago') // 'Saturday, June 13, 2026 at 11:20 AM CDT'
 */
export function showInstant(instant: string, timeZone: string): string {
  const date = new Date(/^\d{4}-\d\d-\d\dT[\d:.]+(Z|[+-]\d\d:\d\d)$/.test(instant) ? instant : Number.NaN);
  if (Number.isNaN(date.getTime())) throw new TypeError('A mail shows instants, and this is none.');
  const day = new Intl.DateTimeFormat('en-US', { dateStyle: 'full', timeZone }).format(date);
  const time = new Intl.DateTimeFormat('en-US', {
    hour: 'numeric',
    minute: '2-digit',
    timeZone,
    timeZoneName: 'short',
  }).format(date);
  // Between time and AM stands a narrow space, which would make a plain text need an encoding.
  return `${day} at ${time}`.replaceAll('\u202f', ' ');
}
