import type { Occurred } from '../../../shared/record/time-and-place.js';
import { tellInstant } from '../look/tell-instant.js';
import { onSheet as say } from '../words/officer.js';

/** When it happened, as exactly as anybody can say: `about Sat 13 June 15:10, 10 minutes either way`. */
export function tellOccurred(occurred: Occurred | undefined, timeZone: string | undefined): string | null {
  if (occurred === undefined) return null;
  const { at, until, precision, withinMinutes } = occurred;
  const time = tellInstant(at, timeZone);
  if (until !== undefined) return say.between(time, tellInstant(until, timeZone));
  if (precision === 'to-the-minute') return time;
  return withinMinutes === undefined ? say.about(time) : `${say.about(time)}, ${say.within(withinMinutes)}`;
}
