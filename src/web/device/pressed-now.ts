import type { Stamp } from '../../../shared/call/stamp.js';
import { clockOffsetS } from './clock-offset.js';

/** A time that was pressed just now, with how far this phone's clock is off. */
export function pressedNow(): Stamp {
  const phoneOffsetS = clockOffsetS() ?? 0;
  return { at: new Date().toISOString(), how: 'pressed', ...(phoneOffsetS !== 0 && { phoneOffsetS }) };
}
