/** Degrees, WGS 84, north and east positive. */
export interface MapPoint {
  readonly latitude: number;
  readonly longitude: number;
}

/** A thing to be pressed on the map, which stands under the same number in the list beside it. */
export interface MapPin extends MapPoint {
  readonly id: string;
  readonly number: number;
  /** What a screen reader says. */
  readonly name: string;
}

/** A place by its name, to find one's way by. */
export interface MapPlace extends MapPoint {
  readonly name: string;
}

/** `GET /api/map`: pictures that the business has set. */
export interface MapTiles {
  readonly url: string;
  readonly attribution: string;
}

/** Of things with a name, those whose position is known, as a map takes them. */
export function placedOf(
  things: readonly { name?: string; latitude?: number | null; longitude?: number | null }[],
): MapPlace[] {
  return things.flatMap(({ name, latitude, longitude }) =>
    name === undefined || typeof latitude !== 'number' || typeof longitude !== 'number'
      ? []
      : [{ name, latitude, longitude }],
  );
}
