import { localTime } from '../../../shared/time/tell-time.js';
import { language } from '../words/speak.js';

/** The zone of this device. What happened elsewhere is told in the zone of its place: hand that in. */
export function ownZone(): string {
  return Intl.DateTimeFormat().resolvedOptions().timeZone;
}

/** `2026-07-06 19:12:00`: Sweden writes instants the way ISO 8601 does. */
function isoIn(timeZone: string, instant: number): string {
  return new Date(instant).toLocaleString('sv-SE', { timeZone });
}

/** `Wed 8 July 14:30` in a zone, with the year only where it is not this one. */
export function tellInstant(instant: string, timeZone = ownZone(), now = Date.now()): string {
  const iso = isoIn(timeZone, Date.parse(instant));
  if (language() === 'en') return localTime(iso, now);
  return new Date(instant).toLocaleString('es', {
    timeZone,
    weekday: 'short',
    day: 'numeric',
    month: 'long',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  });
}

/** `14:30`. */
export function tellClock(instant: string, timeZone = ownZone()): string {
  return isoIn(timeZone, Date.parse(instant)).slice(11, 16);
}

/** `2026-07-08` in a zone. */
export function dayIn(timeZone = ownZone(), instant = Date.now()): string {
  return isoIn(timeZone, instant).slice(0, 10);
}

/** `Thursday 26 November` of a day such as 2026-11-26, which has no zone. */
export function tellDay(day: string): string {
  return new Date(`${day}T12:00:00Z`).toLocaleDateString(language() === 'en' ? 'en-GB' : 'es', {
    timeZone: 'UTC',
    weekday: 'long',
    day: 'numeric',
    month: 'long',
  });
}
