import { readWallClock } from '../../../shared/time/read-wall-clock.js';
import { nowByService } from './use-now.js';

/** What a field of day and time says in a zone; an empty one means just now, null is no time. */
export function momentOf(text: string, zone: string): string | null {
  return text === '' ? new Date(nowByService()).toISOString() : readWallClock(text, zone);
}

/** An instant as such a field takes it: `2026-06-13T11:20`. Sweden writes instants the way ISO 8601 does. */
export function fieldMoment(instant: string, zone: string): string {
  return new Date(instant).toLocaleString('sv-SE', { timeZone: zone }).slice(0, 16).replace(' ', 'T');
}
