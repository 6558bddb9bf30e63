import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadGeography } from '../../src/server/place/place.api.js';
import { OUTLINES, metresByWalking, stateByWalking } from './state-outlines.js';

const geography = loadGeography();

const inside = (latitude: number, longitude: number): string | null =>
  geography.statesNear(latitude, longitude, 0).inside?.state ?? null;

/** The states that a determination takes for candidates around a position on land. */
const candidates = (latitude: number, longitude: number): string[] => {
  const found = geography.statesNear(latitude, longitude, 1_000);
  return [found.inside, ...found.near].flatMap((entry) => (entry === null ? [] : [entry.state]));
};

describe('the state that a position lies in', () => {
  // Places and their coordinates from memory, each a few hundred metres or more from the line in the file.
  it.each([
    ['Bristol, Tennessee', 36.5947, -82.1835, 'TN'],
    ['Bristol, Virginia', 36.599, -82.18, 'VA'],
    ['Texarkana, Texas', 33.425, -94.048, 'TX'],
    ['Texarkana, Arkansas', 33.4418, -94.0377, 'AR'],
    ['Kansas City, Kansas', 39.1155, -94.6268, 'KS'],
    ['Kansas City, Missouri', 39.0997, -94.5786, 'MO'],
    ['Newport, Kentucky', 39.0914, -84.4958, 'KY'],
    ['Covington, Kentucky', 39.0837, -84.5086, 'KY'],
    ['Portland, Oregon', 45.5152, -122.6784, 'OR'],
    ['Jantzen Beach, Oregon', 45.6137, -122.68, 'OR'],
    ['Vancouver, Washington', 45.6387, -122.6615, 'WA'],
    ['Memphis, Tennessee', 35.1495, -90.049, 'TN'],
    ['West Memphis, Arkansas', 35.1465, -90.1845, 'AR'],
    ['Denison, Texas', 33.7557, -96.5367, 'TX'],
    ['Durant, Oklahoma', 33.994, -96.3708, 'OK'],
    ['Hood River, Oregon', 45.7054, -121.5215, 'OR'],
    ['White Salmon, Washington', 45.7276, -121.4865, 'WA'],
    ['Bingen, Washington', 45.7151, -121.4645, 'WA'],
    ['Lake Winnipesaukee (inland lakes are in their state)', 43.6, -71.33, 'NH'],
    ['Point Roberts, Washington, reached by land through Canada', 48.985, -123.06, 'WA'],
    ['the Northwest Angle, Minnesota', 49.35, -95.1, 'MN'],
    ['the Washington Monument', 38.8895, -77.0353, 'DC'],
    ['St Thomas', 18.34, -64.93, 'VI'],
    ['Vieques', 18.12, -65.44, 'PR'],
    ['Guam', 13.45, 144.78, 'GU'],
    ['Saipan', 15.2, 145.75, 'MP'],
    ['Tutuila', -14.3, -170.7, 'AS'],
    ['Attu, east longitude', 52.9, 172.9, 'AK'],
  ])('%s', (_place, latitude, longitude, state) => {
    expect(inside(latitude, longitude)).toBe(state);
  });

  // From memory too: the file puts the first five on the wrong side, by less than 300 m.
  it.each([
    ['Texarkana, the Arkansas half of the courthouse', 33.425, -94.043, 'AR'],
    ['Cincinnati, the park at the river', 39.0965, -84.5115, 'OH'],
    ['Vancouver, Washington, at the river', 45.6215, -122.679, 'WA'],
    ['Ellis Island, the New York part', 40.6995, -74.0395, 'NY'],
    ['Carter Lake, Iowa, west of the river', 41.2886, -95.917, 'IA'],
    ['Liberty Island, New York, in New Jersey waters', 40.6892, -74.0445, 'NY'],
  ])('%s is among the states within 1 km', (_place, latitude, longitude, state) => {
    expect(candidates(latitude, longitude)).toContain(state);
  });

  // Where surveyed lines meet; coordinates from memory.
  it.each([
    ['Four Corners', 36.99898, -109.04517, ['AZ', 'CO', 'NM', 'UT']],
    ['Wyoming, Nebraska, Colorado', 41.0, -104.0517, ['CO', 'NE', 'WY']],
    ['Oklahoma, Texas, New Mexico', 36.5, -103.0017, ['NM', 'OK', 'TX']],
    ['Texas, Arkansas, Louisiana', 33.0192, -94.043, ['AR', 'LA', 'TX']],
  ])('%s: every state that meets there is within 300 m', (_place, latitude, longitude, states) => {
    const found = geography.statesNear(latitude, longitude, 300);
    const all = [found.inside, ...found.near].map((entry) => entry?.state);
    expect(all.sort()).toEqual(states);
    expect(found.inside?.distanceM).toBeLessThanOrEqual(300);
  });

  it('finds both states of Lake Texoma, the one around the position first', () => {
    expect(candidates(33.818, -96.571)).toEqual(['TX', 'OK']);
  });
});

describe('off the coast', () => {
  it.each([
    ['10 km off Virginia Beach (memory)', 36.85, -75.86, ['VA']],
    ['13 km off Galveston (memory)', 29.2, -94.7, ['TX']],
    // Oregon Revised Statutes 186.520: the state line at the mouth of the Columbia, 46 15 N 124 05 W.
    ['the mouth of the Columbia', 46.25, -124.083333, ['WA', 'OR']],
    ['east of Semisopochnoi, across the antimeridian (memory)', 51.95, -179.95, ['AK']],
  ])('%s: in no state, near %s', (_place, latitude, longitude, states) => {
    const found = geography.statesNear(latitude, longitude, 22_000);
    expect(found.inside).toBeNull();
    expect(found.near.map(({ state }) => state)).toEqual(states);
  });

  it('has no state in the middle of Lake Michigan, at the pole or off Africa', () => {
    for (const [latitude, longitude] of [
      [43.5, -87],
      [90, 0],
      [0, 0],
      [51.95, 180],
    ] as const) {
      expect(geography.statesNear(latitude, longitude, 10_000)).toEqual({ inside: null, near: [] });
    }
  });
});

describe('distances', () => {
  it('counts a shared border for both states alike', () => {
    const { inside: here, near } = geography.statesNear(33.818, -96.571, 1_000);
    expect(near[0]?.distanceM).toBe(here?.distanceM);
  });

  it("measures an inside position to its own state's line however far that is", () => {
    // Vincenty's formulas along the outline give 260.3 km.
    const { inside: here, near } = geography.statesNear(31, -99, 1_000);
    expect(near).toEqual([]);
    expect(here?.distanceM).toBeGreaterThan(255_000);
    expect(here?.distanceM).toBeLessThan(265_000);
  });

  it('measures to the coast where that is nearer than the border', () => {
    const { inside: here } = geography.statesNear(36.85, -75.98, 1_000);
    expect(here).toMatchObject({ state: 'VA' });
    expect(here?.distanceM).toBeLessThan(2_000);
  });

  it.each([
    [91, 0],
    [-90.1, 0],
    [0, 180.5],
    [0, -181],
    [Number.NaN, 0],
    [0, Number.NaN],
  ])('refuses %d, %d', (latitude, longitude) => {
    expect(() => geography.statesNear(latitude, longitude, 1_000)).toThrow(RangeError);
  });
});

describe('against a walk around every outline', () => {
  const vertices = [...OUTLINES.values()].flat(2);
  const nearLines = fc
    .tuple(
      fc.nat(vertices.length - 1),
      fc.double({ min: -0.25, max: 0.25, noNaN: true }),
      fc.double({ min: -0.25, max: 0.25, noNaN: true }),
    )
    .map(([at, north, east]) => {
      const [longitude = 0, latitude = 0] = vertices[at] ?? [];
      return { latitude: latitude + north, longitude: longitude + east };
    })
    .filter(({ longitude }) => Math.abs(longitude) < 179);

  it('finds the same state', () => {
    fc.assert(
      fc.property(nearLines, ({ latitude, longitude }) => {
        const { inside: here, near } = geography.statesNear(latitude, longitude, 2);
        // Within a metre or two of a line the two may round to different sides of it.
        fc.pre(near.length === 0 && (here === null || here.distanceM > 2));
        expect(here?.state ?? null).toBe(stateByWalking(latitude, longitude));
      }),
      { numRuns: 200 },
    );
  });

  it('finds the same states within 22 km, at the same distance to one part in a hundred', () => {
    fc.assert(
      fc.property(nearLines, ({ latitude, longitude }) => {
        const found = geography.statesNear(latitude, longitude, 22_000);
        const measured = new Map(found.near.map(({ state, distanceM }) => [state, distanceM]));
        for (const state of OUTLINES.keys()) {
          const metres = metresByWalking(state, latitude, longitude);
          const distance = found.inside?.state === state ? found.inside.distanceM : measured.get(state);
          if (distance === undefined) expect(metres).toBeGreaterThan(22_000 * 0.99);
          else if (distance < 35_000) expect(Math.abs(distance - metres)).toBeLessThan(metres * 0.01 + 2);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('for any position', () => {
  const positions = fc.record({
    latitude: fc.double({ min: -90, max: 90, noNaN: true }),
    longitude: fc.double({ min: -180, max: 180, noNaN: true }),
  });
  const american = fc.record({
    latitude: fc.double({ min: 24, max: 50, noNaN: true }),
    longitude: fc.double({ min: -125, max: -66, noNaN: true }),
  });

  it('lists other states only, nearest first, none further than asked, and more when asked for more', () => {
    fc.assert(
      fc.property(fc.oneof(american, positions), fc.nat(40_000), ({ latitude, longitude }, withinM) => {
        const found = geography.statesNear(latitude, longitude, withinM);
        const distances = found.near.map(({ distanceM }) => distanceM);
        const states = found.near.map(({ state }) => state);
        expect(states).not.toContain(found.inside?.state);
        expect(new Set(states).size).toBe(states.length);
        expect(distances).toEqual([...distances].sort((a, b) => a - b));
        expect(distances.every((metres) => metres >= 0 && metres <= withinM)).toBe(true);
        if (found.inside !== null) expect(found.inside.distanceM).toBeGreaterThanOrEqual(0);
        const wider = geography.statesNear(latitude, longitude, withinM + 10_000);
        expect(wider.inside?.state).toBe(found.inside?.state);
        expect(wider.near.slice(0, found.near.length)).toEqual(found.near);
      }),
    );
  });
});
