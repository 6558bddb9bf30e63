import { fault, type Notation, type PositionFault } from './position-reading.js';
import { splitAngles, type WrittenAngle } from './split-angles.js';
import { tokenizeAngles } from './tokenize-angles.js';

interface AnglePair {
  ok: true;
  latitude: number;
  longitude: number;
  notation: Notation;
  precisionM: number;
  longitudeFirst: boolean;
}

const NOTATIONS: readonly Notation[] = ['decimal-degrees', 'degrees-minutes', 'degrees-minutes-seconds'];

/** A minute of latitude is a nautical mile. */
const METRES_PER_DEGREE = 60 * 1_852;

/**
 * Reads a latitude and a longitude from upper-case text, in degrees with or without minutes and seconds.
 * Letters or labels say which is which; without them latitude comes first, unless the first number could
 * only be a longitude.
 * @example parseAnglePair('N33 49.08 W96 34.26') // latitude 33.818, longitude -96.571
 */
export function parseAnglePair(text: string): AnglePair | PositionFault {
  const tokens = tokenizeAngles(text);
  if (typeof tokens === 'string') {
    return tokens === '-'
      ? fault('ambiguous', 'Write a minus directly before its number and a blank before it, or use letters.')
      : fault(
          'unreadable',
          `Cannot read “${tokens}”: write it like 33.818, -96.571 or 33 49.08 N 96 34.26 W.`,
        );
  }
  const angles = splitAngles(tokens);
  if ('ok' in angles) return angles;
  const first = measure(angles[0]);
  if ('ok' in first) return first;
  const second = measure(angles[1]);
  if ('ok' in second) return second;
  const named = first.axis !== null || second.axis !== null;
  const longitudeFirst = !named && Math.abs(first.degrees) > 90 && Math.abs(second.degrees) <= 90;
  const swap = longitudeFirst || first.axis === 'longitude' || second.axis === 'latitude';
  const [latitude, longitude] = swap ? [second, first] : [first, second];
  if (Math.abs(latitude.degrees) > 90) {
    return fault('latitude-out-of-range', `A latitude has at most 90 degrees.${runTogether(latitude)}`);
  }
  if (Math.abs(longitude.degrees) > 180) {
    return fault('longitude-out-of-range', `A longitude has at most 180 degrees.${runTogether(longitude)}`);
  }
  const parts = Math.max(first.parts, second.parts);
  return {
    ok: true,
    latitude: latitude.degrees,
    longitude: longitude.degrees,
    notation: NOTATIONS[parts - 1] ?? 'degrees-minutes-seconds',
    precisionM: Math.max(first.step, second.step) * METRES_PER_DEGREE,
    longitudeFirst,
  };
}

interface Angle {
  axis: WrittenAngle['axis'];
  degrees: number;
  /** Degrees of one step of the last digit given. */
  step: number;
  /** Degrees alone, with minutes, or with seconds. */
  parts: number;
}

function measure({ axis, sign, numbers }: WrittenAngle): Angle | PositionFault {
  const [degrees, minutes, seconds] = numbers;
  if (numbers.slice(0, -1).some(({ whole }) => !whole)) {
    return fault('unreadable', 'Only the last number of an angle may have decimals, as in 33 49.08 N.');
  }
  if ((minutes?.value ?? 0) >= 60) {
    return fault('minutes-out-of-range', 'Minutes go from 0 to less than 60: 60 make the next degree.');
  }
  if ((seconds?.value ?? 0) >= 60) {
    return fault('seconds-out-of-range', 'Seconds go from 0 to less than 60: 60 make the next minute.');
  }
  const size = (degrees?.value ?? 0) + (minutes?.value ?? 0) / 60 + (seconds?.value ?? 0) / 3600;
  const step = 10 ** -(numbers.at(-1)?.decimals ?? 0) / 60 ** (numbers.length - 1);
  return { axis, degrees: size === 0 ? 0 : sign * size, step, parts: numbers.length };
}

/** Instruments print degrees and minutes as one number: 3349.08 for 33 degrees 49.08 minutes. */
function runTogether({ parts, degrees }: Angle): string {
  const size = Math.abs(degrees);
  return parts === 1 && size >= 100 && size % 100 < 60
    ? ' Write degrees and minutes apart: 33 49.08, not 3349.08.'
    : '';
}
