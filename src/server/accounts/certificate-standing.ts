export const STANDINGS = ['in-date', 'ends-soon', 'out-of-date', 'no-end'] as const;

export type CertificateStanding = (typeof STANDINGS)[number];

/** Long enough for a course to be found before the certificate ends. */
const SOON_DAYS = 30;
const DAY_MS = 24 * 60 * 60_000;

/**
 * How a certificate stands on a day; its last day is a good one.
 * @example standingOn('2026-06-13', '2026-06-13') // 'ends-soon'
 * @example standingOn('2026-06-14', '2026-06-13') // 'out-of-date'
 */
export function standingOn(day: string, expiresOn: string | null): CertificateStanding {
  if (expiresOn === null) return 'no-end';
  if (expiresOn < day) return 'out-of-date';
  const daysLeft = (Date.parse(expiresOn) - Date.parse(day)) / DAY_MS;
  return daysLeft <= SOON_DAYS ? 'ends-soon' : 'in-date';
}
