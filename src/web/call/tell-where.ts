import { formatPosition } from '../../../shared/place/format-position.js';
import { metresPerDegree } from '../../../shared/place/metres-per-degree.js';
import { call as say } from '../words/call.js';
import type { Where } from './call-draft.js';

/** A point of the map, in degrees. */
interface Point {
  readonly latitude: number;
  readonly longitude: number;
}

/** Something with a name and perhaps a position. */
interface Named {
  readonly name: string;
  readonly latitude: number | null;
  readonly longitude: number | null;
}

/** `33° 49.230′ N, 96° 34.500′ W`; null where only words are known. */
export function positionOfWhere({ latitude, longitude }: Where): string | null {
  if (latitude === undefined || longitude === undefined) return null;
  return formatPosition(latitude, longitude, 'degrees-minutes', 2);
}

/** The same in decimal degrees, as many dispatchers type it. */
export function decimalsOfWhere({ latitude, longitude }: Where): string | null {
  if (latitude === undefined || longitude === undefined) return null;
  return formatPosition(latitude, longitude, 'decimal-degrees');
}

/** Where it is for people: the name of the place, or the position, or what was said. */
export function tellWhere(where: Where): string {
  return (where.how === 'phone' || where.how === 'map' ? positionOfWhere(where) : where.asSaid) ?? '';
}

/** Below it, smaller: how it is known. */
export function aboutWhere(where: Where): string | undefined {
  const position = positionOfWhere(where);
  switch (where.how) {
    case 'phone':
      return say.where.within(where.accuracyM ?? 0);
    case 'map':
      return say.where.onMap;
    case 'place':
      return position === null ? undefined : `${position}, ${say.where.ofPlace}`;
    case 'written':
      return `${position ?? ''}, ${say.where.asWritten}`;
    case 'words':
      return undefined;
  }
}

/** The nearest of things with a name, with how far and in which direction it lies: `820 m north of Heron Cove`. */
export function nearestOf<Thing extends Named>(
  where: Where,
  things: readonly Thing[],
): { thing: Thing; metres: number; words: string } | null {
  const { latitude, longitude } = where;
  if (latitude === undefined || longitude === undefined) return null;
  const [nearest] = things
    .flatMap((thing) =>
      thing.latitude === null || thing.longitude === null
        ? []
        : [
            {
              thing,
              ...vectorTo({ latitude, longitude }, { latitude: thing.latitude, longitude: thing.longitude }),
            },
          ],
    )
    .sort((a, b) => a.metres - b.metres);
  if (nearest === undefined) return null;
  const { thing, metres, bearing } = nearest;
  return {
    thing,
    metres,
    words: say.readOut.distance(roundMetres(metres), say.readOut.bearings[bearing] ?? '', thing.name),
  };
}

/** From a thing to the point: metres, and the eighth of the compass in which the point lies from the thing. */
function vectorTo(point: Point, thing: Point): { metres: number; bearing: number } {
  const degree = metresPerDegree(point.latitude);
  const north = (point.latitude - thing.latitude) * degree.latitude;
  const east = (point.longitude - thing.longitude) * degree.longitude;
  const eighth = Math.round(Math.atan2(east, north) / (Math.PI / 4));
  return { metres: Math.hypot(north, east), bearing: (eighth + 8) % 8 };
}

/** To ten metres below a kilometre, to a hundred above. */
function roundMetres(metres: number): number {
  const step = metres < 1000 ? 10 : 100;
  return Math.round(metres / step) * step;
}
