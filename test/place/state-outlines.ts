import { createRequire } from 'node:module';
import Vincenty from 'geodesy/latlon-ellipsoidal-vincenty.js';
import type { Position } from 'geojson';
import { feature } from 'topojson-client';
import type { GeometryCollection, Topology } from 'topojson-specification';
import { STATE_NAMES } from '../../shared/place/state-codes.js';

/**
 * The yardstick for finding states: the same boundary file read by its own package's tools, every ring of
 * every state walked, distances by Vincenty's formulas. Slow, and nothing in it is shared with the code.
 */
const atlas = createRequire(import.meta.url)('us-atlas/states-10m.json') as Topology<{
  states: GeometryCollection<{ name: string }>;
}>;

/** The package's published types do not resolve under this module system. */
interface Point {
  distanceTo(other: Point): number;
}
const LatLon = Vincenty as unknown as new (latitude: number, longitude: number) => Point;

export const OUTLINES: ReadonlyMap<string, Position[][]> = new Map(
  feature(atlas, atlas.objects.states).features.map(({ geometry, properties }) => {
    const rings =
      geometry.type === 'Polygon'
        ? geometry.coordinates
        : geometry.type === 'MultiPolygon'
          ? geometry.coordinates.flat()
          : [];
    const code = Object.keys(STATE_NAMES).find((state) => STATE_NAMES[state] === properties.name);
    return [code ?? properties.name, rings];
  }),
);

export function stateByWalking(latitude: number, longitude: number): string | null {
  const found = [...OUTLINES].find(
    ([, rings]) => rings.filter((ring) => surrounds(ring, latitude, longitude)).length % 2 === 1,
  );
  return found?.[0] ?? null;
}

function surrounds(ring: Position[], latitude: number, longitude: number): boolean {
  const crossings = pairs(ring).filter(([[x1, y1], [x2, y2]]) => {
    const spans = y1 > latitude !== y2 > latitude;
    return spans && longitude < x1 + ((latitude - y1) / (y2 - y1)) * (x2 - x1);
  });
  return crossings.length % 2 === 1;
}

/** Metres to a state's outline when some of it is within about 40 km, else Infinity. */
export function metresByWalking(state: string, latitude: number, longitude: number): number {
  const from = new LatLon(latitude, longitude);
  const reach = 0.4;
  const wide = reach / Math.cos((latitude * Math.PI) / 180);
  const close = (OUTLINES.get(state) ?? []).flatMap(pairs).filter(([[x1, y1], [x2, y2]]) => {
    const beside = Math.min(x1, x2) - wide < longitude && longitude < Math.max(x1, x2) + wide;
    return beside && Math.min(y1, y2) - reach < latitude && latitude < Math.max(y1, y2) + reach;
  });
  const metresAt = ([[x1, y1], [x2, y2]]: Segment, share: number): number =>
    from.distanceTo(new LatLon(y1 + share * (y2 - y1), x1 + share * (x2 - x1)));
  return close.reduce((least, segment) => {
    let [low, high] = [0, 1];
    for (let round = 0; round < 40; round += 1) {
      const third = (high - low) / 3;
      if (metresAt(segment, low + third) < metresAt(segment, high - third)) high -= third;
      else low += third;
    }
    return Math.min(least, metresAt(segment, low));
  }, Infinity);
}

type Segment = [[number, number], [number, number]];

function pairs(ring: Position[]): Segment[] {
  return ring.slice(1).map((end, at) => {
    const start = ring[at] ?? end;
    return [
      [start[0] ?? 0, start[1] ?? 0],
      [end[0] ?? 0, end[1] ?? 0],
    ];
  });
}
