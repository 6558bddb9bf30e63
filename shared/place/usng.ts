import * as geodesy from 'geodesy/mgrs.js';
import { checkCoordinates } from './metres-per-degree.js';
import { fault, type PositionFault } from './position-reading.js';
import { wrapLongitude } from './wrap-longitude.js';

/** What is used of the package, whose published types do not resolve under Node's module rules. */
interface GridLibrary {
  LatLon: new (latitude: number, longitude: number) => { toUtm(): { toMgrs(): GridReference } };
  default: new (
    zone: number,
    band: string,
    column: string,
    row: string,
    easting: number,
    northing: number,
  ) => { toUtm(): { northing: number; toLatLon(): Corner } };
}

interface GridReference {
  zone: number;
  e100k: string;
  n100k: string;
  easting: number;
  northing: number;
}

interface Corner {
  lat: number;
  lon: number;
}

const { LatLon, default: Mgrs } = geodesy as unknown as GridLibrary;

/** Bands of eight degrees from 80 south; the last, X, reaches from 72 to 84 north. */
const BANDS = 'CDEFGHJKLMNPQRSTUVWX';
const SQUARE_M = 100_000;

export type UsngDigits = 2 | 4 | 6 | 8 | 10;

/**
 * U.S. National Grid reference (FGDC-STD-011-2001) of a position: the square that it lies in, its digits
 * cut off and never rounded. `digits` counts those of easting and northing together. Throws RangeError
 * outside the grid, which ends at 80 south and just short of 84 north; squares cut by those ends are not
 * read back.
 * @example usngOf(34, -118.24, 10) // '11S LT 85485 62848'
 */
export function usngOf(latitude: number, longitude: number, digits: UsngDigits): string {
  checkCoordinates(latitude, longitude);
  // The package takes 180 east for a zone 61, and fails within a nanometre south of the equator.
  const north = Math.abs(latitude) < 1e-9 ? 0 : latitude;
  const reference = new LatLon(north, longitude === 180 ? -180 : longitude).toUtm().toMgrs();
  const { zone, e100k, n100k, easting, northing } = reference;
  const band = BANDS[Math.min(BANDS.length - 1, Math.floor(north / 8) + 10)];
  const cut = (metres: number): string =>
    String(Math.min(SQUARE_M - 1, Math.floor(metres)))
      .padStart(5, '0')
      .slice(0, digits / 2);
  return `${zone}${band} ${e100k}${n100k} ${cut(easting)} ${cut(northing)}`;
}

/**
 * South-west corner and side of the square that a reference names, or why it names none. The parts are as
 * written: zone number, band letter, the two letters of the 100 km square, and the digits.
 * @example positionOfUsng('4', 'Q', 'FJ', '12345', '67890')
 * // { ok: true, latitude: 21.409796672, longitude: -157.916081174, precisionM: 1 } to nine decimals
 */
export function positionOfUsng(
  zone: string,
  band: string,
  square: string,
  easting: string,
  northing: string,
): { ok: true; latitude: number; longitude: number; precisionM: number } | PositionFault {
  const precisionM = 10 ** (5 - easting.length);
  const cornerAt = (east: number, north: number): Corner => {
    const utm = new Mgrs(Number(zone), band, square.slice(0, 1), square.slice(1), east, north).toUtm();
    const corner = utm.toLatLon();
    // Rows repeat every 2000 km. South of the equator the package may take the row above for one that
    // starts below the foot of the band, as squares do toward the edges of a zone.
    if (corner.lat < (BANDS.indexOf(band) - 8) * 8) return corner;
    utm.northing -= 2_000_000;
    return utm.toLatLon();
  };
  const east = Number(easting) * precisionM;
  const north = Number(northing) * precisionM;
  try {
    const southWest = cornerAt(east, north);
    const northEast = cornerAt(east + precisionM, north + precisionM);
    if (meetsZone(Number(zone), band, southWest, northEast)) {
      return { ok: true, latitude: southWest.lat, longitude: southWest.lon, precisionM };
    }
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
  }
  return fault(
    'no-such-grid-square',
    `Grid zone ${zone}${band} has no square ${square} with these digits: check the letters (I and O are never used).`,
  );
}

/** Whether a square touches its grid zone; at the edges of a zone it may stick out by most of its side. */
function meetsZone(zone: number, band: string, southWest: Corner, northEast: Corner): boolean {
  const south = (BANDS.indexOf(band) - 10) * 8;
  const north = band === 'X' ? 84 : south + 8;
  const middle = zone * 6 - 183;
  // The sides of a square lean against the meridians by less than a quarter of its size.
  const lean = (northEast.lat - southWest.lat) / 2 + 1e-5;
  const acrossBand = northEast.lat >= south - lean && southWest.lat <= north + lean;
  const fromMiddle = ({ lon }: Corner): number => wrapLongitude(lon - middle);
  // Off Norway and around Svalbard zones are up to three times as wide.
  const reach = lean + (zone >= 31 && zone <= 37 && (band === 'V' || band === 'X') ? 9 : 3);
  return acrossBand && fromMiddle(northEast) >= -reach && fromMiddle(southWest) <= reach;
}
