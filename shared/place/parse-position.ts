import { parseAnglePair } from './parse-angle-pair.js';
import { fault, type PositionFault, type PositionReading } from './position-reading.js';
import { remarkOnPosition } from './remark-on-position.js';
import { positionOfUsng } from './usng.js';

const LONGEST = 120;
const GRID =
  /^(?:(?:USNG|MGRS)[\s:]*)?(?:(\d{1,2})\s*([A-Z])\s*)?([A-Z]{2})\s*([\d\s]*)(?:\(?(?:NAD ?83|WGS ?84)\)?)?$/;

/**
 * Reads a position as people write it or read it out: decimal degrees, degrees and minutes, degrees,
 * minutes and seconds (letters before or after, signs, marks or plain spaces), or U.S. National Grid with
 * two to ten digits. What cannot be read, or could be read in two ways, comes back as a fault that names
 * the fix; a doubtful position comes back with remarks. It never throws.
 * @example parsePosition('33 49.08 N 96 34.26 W')
 * // { ok: true, latitude: 33.818, longitude: -96.571, notation: 'degrees-minutes', precisionM: 18.52, remarks: [] }
 */
export function parsePosition(text: string): PositionReading | PositionFault {
  const written = text.trim().toUpperCase();
  if (written === '') return fault('empty', 'Give a position, for example 33.818, -96.571.');
  if (written.length > LONGEST) {
    return fault('unreadable', `Give the position alone, in at most ${LONGEST} characters.`);
  }
  const [, zone, band, square = '', digits = ''] = GRID.exec(written) ?? [];
  if (square !== '' && (zone !== undefined || digits !== '')) return parseGrid(zone, band, square, digits);
  const pair = parseAnglePair(written);
  if (!pair.ok) return pair;
  const { latitude, longitude, notation, precisionM, longitudeFirst } = pair;
  const remarks = remarkOnPosition(latitude, longitude);
  if (longitudeFirst) {
    const detail = 'The first number is too large for a latitude: read as longitude, then latitude.';
    remarks.unshift({ code: 'longitude-first', detail });
  }
  return { ok: true, latitude, longitude, notation, precisionM, remarks };
}

function parseGrid(
  zone: string | undefined,
  band: string | undefined,
  square: string,
  digits: string,
): PositionReading | PositionFault {
  if (zone === undefined || band === undefined) {
    return fault('grid-zone-missing', 'Put the grid zone in front, for example 14S in 14S QC 2204 4811.');
  }
  const groups = digits.trim().split(/\s+/);
  const whole = groups.join('');
  const half = whole.length / 2;
  const uneven = groups.length > 2 || (groups.length === 2 && groups[0]?.length !== half);
  if (uneven || whole.length < 2 || whole.length > 10 || whole.length % 2 === 1) {
    return fault('grid-digits-uneven', 'Give as many digits of easting as of northing, one to five of each.');
  }
  const found = positionOfUsng(zone, band, square, whole.slice(0, half), whole.slice(half));
  if (!found.ok) return found;
  return { ...found, notation: 'usng', remarks: remarkOnPosition(found.latitude, found.longitude) };
}
