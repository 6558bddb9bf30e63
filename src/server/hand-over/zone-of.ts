import type { PacketRecord } from '../../../shared/hand-over/packet.js';
import type { TimeAndPlace } from '../../../shared/record/time-and-place.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';

/** The zone of the place where it is told and leaves, as that is the one on everybody's watch there. */
export function zoneOf({ sections, timeZone }: PacketRecord): string {
  const { timeZone: fact } = (sections['time-and-place'] ?? {}) as TimeAndPlace;
  return fact !== undefined && isZone(fact.value) ? fact.value : timeZone;
}

function isZone(zone: unknown): zone is string {
  try {
    return typeof zone === 'string' && zoneClock(zone).zone === zone;
  } catch (error) {
    if (error instanceof RangeError) return false;
    throw error;
  }
}
