/** @throws TypeError for anything but an IANA zone */
export function assertTimeZone(timeZone: string): void {
  if (!/^[A-Za-z0-9_+/-]{1,64}$/.test(timeZone)) throw new TypeError('A mail shows times in an IANA zone.');
}

/**
 * An instant as people read it.
 * @throws TypeError for anything but an instant
 * @example showInstant('2026-06-13T16:20:00.000Z', 'America/Chicago') // 'Saturday, June 13, 2026 at 11:20 AM CDT'
 */
export function showInstant(instant: string, timeZone: string, language: 'en' | 'es' = 'en'): string {
  const date = new Date(/^\d{4}-\d\d-\d\dT[\d:.]+(Z|[+-]\d\d:\d\d)$/.test(instant) ? instant : Number.NaN);
  if (Number.isNaN(date.getTime())) throw new TypeError('A mail shows instants, and this is none.');
  const locale = LOCALES[language];
  const day = new Intl.DateTimeFormat(locale, { dateStyle: 'full', timeZone }).format(date);
  const time = new Intl.DateTimeFormat(locale, {
    hour: 'numeric',
    minute: '2-digit',
    timeZone,
    timeZoneName: 'short',
  }).format(date);
  // Between time and AM stands a narrow space, which would make a plain text need an encoding.
  return `${day}${AT[language]}${time}`.replaceAll(/[\u202f\u00a0]/g, ' ');
}

/** As in the United States. */
const LOCALES = { en: 'en-US', es: 'es-US' } as const;
const AT = { en: ' at ', es: ', ' } as const;
