import { language } from '../words/speak.js';

/** `13 June 2026`, a day of the calendar with its year: `tellDay('2026-06-13')`. */
export function tellDay(day: string): string {
  const instant = new Date(`${day}T00:00:00Z`);
  if (Number.isNaN(instant.getTime())) return day;
  const parts = { timeZone: 'UTC', day: 'numeric', month: 'long', year: 'numeric' } as const;
  return instant.toLocaleDateString(language() === 'es' ? 'es' : 'en-GB', parts);
}
