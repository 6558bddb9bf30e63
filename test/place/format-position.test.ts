import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatPosition } from '../../shared/place/format-position.js';
import { parsePosition } from '../../shared/place/parse-position.js';
import type { Notation } from '../../shared/place/position-reading.js';
import { usngOf, type UsngDigits } from '../../shared/place/usng.js';

describe('degrees', () => {
  it.each<[number, number, Notation, number | undefined, string]>([
    [33.818, -96.571, 'decimal-degrees', undefined, '33.81800, -96.57100'],
    [-0.000001, 0, 'decimal-degrees', 5, '0.00000, 0.00000'],
    // U.S. Geological Survey, on converting degrees: the same angle to five decimals and to whole seconds.
    [45.63248, 0, 'degrees-minutes', 5, '45° 37.94880′ N, 0° 00.00000′ E'],
    [45.63248, 0, 'degrees-minutes-seconds', 3, '45° 37′ 56.928″ N, 0° 00′ 00.000″ E'],
    [45.63248, 0, 'degrees-minutes-seconds', 0, '45° 37′ 57″ N, 0° 00′ 00″ E'],
    // A sailing club's page on coordinates.
    [-23.555, 150.5551333, 'degrees-minutes', 3, '23° 33.300′ S, 150° 33.308′ E'],
    [-23.555, 150.5551333, 'degrees-minutes-seconds', 2, '23° 33′ 18.00″ S, 150° 33′ 18.48″ E'],
    // A coordinate converter's page (which prints 8.1 seconds for the last: 0.0522 x 3600 is 187.92).
    [40.7128, -74.006, 'degrees-minutes-seconds', 2, '40° 42′ 46.08″ N, 74° 00′ 21.60″ W'],
    [34.0522, -118.2437, 'degrees-minutes-seconds', 2, '34° 03′ 07.92″ N, 118° 14′ 37.32″ W'],
    // Oregon Revised Statutes 186.520.
    [46.25, -124.0833333, 'degrees-minutes-seconds', 2, '46° 15′ 00.00″ N, 124° 05′ 00.00″ W'],
    // What rounds to 60 carries.
    [
      59 / 60 + 59.9996 / 3600,
      -1.99999999,
      'degrees-minutes-seconds',
      3,
      '1° 00′ 00.000″ N, 2° 00′ 00.000″ W',
    ],
    [10 + 59.9996 / 60, -9.9999999, 'degrees-minutes', 3, '11° 00.000′ N, 10° 00.000′ W'],
    [10.5, -9.75, 'degrees-minutes', undefined, '10° 30.000′ N, 9° 45.000′ W'],
    [10.5, -9.75, 'degrees-minutes-seconds', undefined, '10° 30′ 00.0″ N, 9° 45′ 00.0″ W'],
  ])('%d, %d as %s with %s decimals', (latitude, longitude, notation, decimals, expected) => {
    expect(formatPosition(latitude, longitude, notation, decimals)).toBe(expected);
  });
});

describe('the grid', () => {
  it.each([
    // Documentation of a grid reference library.
    [34.0, -118.24, '11S LT 85485 62848'],
    // A satellite tool's manual gives UTM 43S 476779 E 3706747 N, rounded; the grid cuts off.
    [33.5, 74.75, '43S DT 76778 06747'],
    // A data platform's documentation: one short of the reference it was made from.
    [21.409796671597924, -157.91608117421092, '4Q FJ 12345 67889'],
    // Computed elsewhere, not published; the last four are at the edges of a zone and of a band.
    [25.75, -80.2, '17R NJ 80232 48241'],
    [47.6, -122.33, '10T ET 50364 72060'],
    [33.85, -96.6, '14S QC 22048 48115'],
    [34.48, -114.35, '11S QU 43368 18566'],
    [34.5, -114.0001, '11S QU 75446 21683'],
    [34.5, -114.0, '12S TD 24544 21684'],
    [39.9999, -75, '18S WK 00000 27746'],
    [40.0, -75, '18T WK 00000 27757'],
  ])('%d, %d is %s', (latitude, longitude, expected) => {
    expect(formatPosition(latitude, longitude, 'usng')).toBe(expected);
  });

  it('cuts digits off and never rounds them up', () => {
    // The Washington Monument, 18S UJ 23483 06479.
    const at = (digits: UsngDigits): string => usngOf(38.8894673, -77.0352381, digits);
    expect(([10, 8, 6, 4, 2] as const).map(at)).toEqual([
      '18S UJ 23483 06479',
      '18S UJ 2348 0647',
      '18S UJ 234 064',
      '18S UJ 23 06',
      '18S UJ 2 0',
    ]);
  });

  it('takes both names of the antimeridian for one', () => {
    expect(usngOf(52, 180, 10)).toBe(usngOf(52, -180, 10));
  });

  it('takes what is not measurably south of the equator for on it', () => {
    expect(usngOf(-5e-324, -75, 10)).toBe('18N WF 00000 00000');
  });

  it('changes its band at whole multiples of eight degrees, wherever', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -9, max: 9 }),
        fc.double({ min: -180, max: 0, noNaN: true }),
        (band, east) => {
          const letter = usngOf(band * 8, east, 2)
            .replace(/^\d+/, '')
            .charAt(0);
          expect(letter).toBe('CDEFGHJKLMNPQRSTUVWX'[band + 10]);
        },
      ),
    );
  });

  it.each([
    [84.5, 0],
    [-80.5, 0],
    [91, 0],
    [0, 181],
    [Number.NaN, 0],
  ])('does not reach %d, %d', (latitude, longitude) => {
    expect(() => formatPosition(latitude, longitude, 'usng')).toThrow(RangeError);
  });
});

describe('reading back what was printed', () => {
  const latitude = fc.integer({ min: -79e8, max: 83e8 }).map((steps) => steps / 1e8);
  const longitude = fc.integer({ min: -180e8, max: 180e8 }).map((steps) => steps / 1e8);

  it.each<[Notation, number]>([
    ['decimal-degrees', 1],
    ['degrees-minutes', 60],
    ['degrees-minutes-seconds', 3600],
  ])('%s: within half a step of the last decimal', (notation, stepsInDegree) => {
    fc.assert(
      fc.property(latitude, longitude, fc.nat(6), (north, east, decimals) => {
        const reading = parsePosition(formatPosition(north, east, notation, decimals));
        if (!reading.ok) throw new Error(reading.detail);
        const half = 0.5 / stepsInDegree / 10 ** decimals + 1e-12;
        expect(Math.abs(reading.latitude - north)).toBeLessThanOrEqual(half);
        expect(Math.abs(reading.longitude - east)).toBeLessThanOrEqual(half);
        expect(reading.notation).toBe(notation);
        expect(reading.precisionM).toBeCloseTo(111_120 / stepsInDegree / 10 ** decimals, 6);
      }),
    );
  });

  it('usng: the position lies in the square, to a metre', () => {
    const digits = fc.constantFrom<UsngDigits>(2, 4, 6, 8, 10);
    fc.assert(
      fc.property(latitude, longitude, digits, (north, east, count) => {
        const printed = usngOf(north, east, count);
        const reading = parsePosition(printed);
        if (!reading.ok) throw new Error(`${printed}: ${reading.detail}`);
        // Squares lean against the meridian, so a corner may be off by a fifth of the side each way.
        const reach = reading.precisionM * 1.25 + 1;
        const metresNorth = (north - reading.latitude) * 111_120;
        const turn = ((east - reading.longitude + 540) % 360) - 180;
        const metresEast = turn * 111_320 * Math.cos((north * Math.PI) / 180);
        expect(Math.abs(metresNorth)).toBeLessThan(reach);
        expect(Math.abs(metresEast)).toBeLessThan(reach);
        expect(reading.precisionM).toBe(10 ** (5 - count / 2));
      }),
      { numRuns: 1_000 },
    );
  });
});
