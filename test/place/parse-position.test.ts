import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parsePosition } from '../../shared/place/parse-position.js';
import type { PositionReading } from '../../shared/place/position-reading.js';

function read(text: string): PositionReading {
  const reading = parsePosition(text);
  if (!reading.ok) throw new Error(`${text}: ${reading.detail}`);
  return reading;
}

const codes = (text: string): string[] => read(text).remarks.map(({ code }) => code);

describe('notations', () => {
  // One place on Lake Texoma in many spellings.
  it.each([
    ['33.818, -96.571', 'decimal-degrees', 111.12],
    ['33.818 -96.571', 'decimal-degrees', 111.12],
    ['33.818,-96.571', 'decimal-degrees', 111.12],
    ['33.818/-96.571', 'decimal-degrees', 111.12],
    ['(33.818; −96.571)', 'decimal-degrees', 111.12],
    ['33.818-96.571', 'decimal-degrees', 111.12],
    ['+33.818 -96.571 ', 'decimal-degrees', 111.12],
    ['33.81800°, -96.57100°', 'decimal-degrees', 1.1112],
    ['33.818 N 96.571 W', 'decimal-degrees', 111.12],
    ['N33.818W96.571', 'decimal-degrees', 111.12],
    ['W 96.571 N 33.818', 'decimal-degrees', 111.12],
    ['33.818 N, -96.571', 'decimal-degrees', 111.12],
    ['lat 33.818 lon -96.571', 'decimal-degrees', 111.12],
    ['Longitude: -96.571, latitude: 33.818', 'decimal-degrees', 111.12],
    ['-96.571 lat 33.818', 'decimal-degrees', 111.12],
    ['33 49.08 N 96 34.26 W', 'degrees-minutes', 18.52],
    ['33 49.08 n, 96 34.26 w', 'degrees-minutes', 18.52],
    ['N 33° 49.08′ W 096° 34.26′', 'degrees-minutes', 18.52],
    ["33º49.08' N 96º34.26' W", 'degrees-minutes', 18.52],
    ['33-49.08N 096-34.26W', 'degrees-minutes', 18.52],
    ['33 49.08 N - 96 34.26 W', 'degrees-minutes', 18.52],
    ['33 degrees 49.08 minutes north, 96 degrees 34.26 minutes west', 'degrees-minutes', 18.52],
    ['Lat. 33 deg 49.08 min N and Long. 96 deg 34.26 min W', 'degrees-minutes', 18.52],
    ['33 49.08 -96 34.26', 'degrees-minutes', 18.52],
    ['33°49′04.8″N, 96°34′15.6″W', 'degrees-minutes-seconds', 3.087],
    [`33°49'04.8"N 96°34'15.6"W`, 'degrees-minutes-seconds', 3.087],
    ["33°49'04.8''N 96°34'15.6''W", 'degrees-minutes-seconds', 3.087],
    ['33-49-04.8 N / 96-34-15.6 W', 'degrees-minutes-seconds', 3.087],
    ['33 49 04.8 -96 34 15.6', 'degrees-minutes-seconds', 3.087],
  ])('%s', (text, notation, precisionM) => {
    const reading = read(text);
    expect(reading.latitude).toBeCloseTo(33.818, 9);
    expect(reading.longitude).toBeCloseTo(-96.571, 9);
    expect(reading.notation).toBe(notation);
    expect(reading.precisionM).toBeCloseTo(precisionM, 3);
    expect(reading.remarks).toEqual([]);
  });

  it.each([
    // U.S. Geological Survey, on converting degrees.
    ['45 37.94880 N 0 W', 45.63248, 0],
    ['45 37 56.928 N 0 W', 45.63248, 0],
    ['45° 37′ 57″ N, 0° W', 45.6325, 0],
    // Oregon Revised Statutes 186.520: first point, and the end meridian, of the line with Washington.
    ['46°15′00.00″ N 124°05′00.00″ W', 46.25, -124.083333],
    ['46 N 118°59′10.12″ W', 46, -118.986144],
    // A sailing club's page on coordinates.
    ['23° 33.300′ S, 150° 33.308′ E', -23.555, 150.5551333],
    ['23° 33′ 18.00″ S, 150° 33′ 18.48″ E', -23.555, 150.5551333],
    // A coordinate converter's page.
    ['40° 42′ 46.08″ N, 74° 0′ 21.6″ W', 40.7128, -74.006],
  ])('%s', (text, latitude, longitude) => {
    const reading = read(text);
    expect(Math.abs(reading.latitude - latitude)).toBeLessThan(5e-7);
    expect(Math.abs(reading.longitude - longitude)).toBeLessThan(5e-7);
  });

  it.each([
    // South-west corners; the first three from the documentation of a data platform's grid functions.
    ['4Q FJ 12345 67890', 21.409796671597924, -157.91608117421092, 1],
    ['4Q FJ 1 6', 21.338665624760598, -157.93921670599434, 10_000],
    ['4Q FJ 123 678', 21.40898645576642, -157.91652127483704, 100],
    ['04QFJ1234567890', 21.409796671597924, -157.91608117421092, 1],
    ['4q fj 12345 67890', 21.409796671597924, -157.91608117421092, 1],
    ['4 Q FJ 1234567890', 21.409796671597924, -157.91608117421092, 1],
    ['USNG: 4Q FJ 16', 21.338665624760598, -157.93921670599434, 10_000],
  ])('grid %s', (text, latitude, longitude, precisionM) => {
    const reading = read(text);
    expect(Math.abs(reading.latitude - latitude)).toBeLessThan(1e-9);
    expect(Math.abs(reading.longitude - longitude)).toBeLessThan(1e-9);
    expect(reading).toMatchObject({ notation: 'usng', precisionM, remarks: [] });
  });

  it('reads the Washington Monument (published for NAD 83, which agrees within the metre)', () => {
    const reading = read('18S UJ 23483 06479 (NAD 83)');
    expect(reading.latitude).toBeCloseTo(38.889463, 6);
    expect(reading.longitude).toBeCloseTo(-77.035242, 6);
  });

  it('reads a square at the edge of a zone and the foot of a band south of the equator', () => {
    const reading = read('31E CJ 5 9');
    expect(reading.latitude).toBeGreaterThan(-64.2);
    expect(reading.latitude).toBeLessThan(-63.9);
  });

  it.each([
    ['18S UJ 2348 0647', 10],
    ['18S UJ 234 064', 100],
    ['18S UJ 23 06', 1_000],
    ['18S UJ 2 0', 10_000],
  ])('%s names a square of %d m around the finer reference', (text, side) => {
    const square = read(text);
    const point = read('18S UJ 23483 06479');
    expect(square.precisionM).toBe(side);
    expect((point.latitude - square.latitude) * 111_120).toBeLessThan(side * 1.1);
    expect((point.longitude - square.longitude) * 86_600).toBeLessThan(side * 1.1);
  });
});

describe('doubts', () => {
  it.each([
    ['33.818, 96.571', ['perhaps-west']],
    ['33 49.08 96 34.26', ['perhaps-west']],
    ['33.818 N 96.571 E', ['perhaps-west']],
    ['-96.571, 33.818', ['longitude-first']],
    ['96.571 33.818', ['longitude-first', 'perhaps-west']],
    ['-70.5, 43.6', ['perhaps-swapped']],
    ['48.86, 2.35', ['outside-united-states']],
    ['13.45, 144.78', []],
    ['52.9 N 172.9 E', []],
    ['14 18 S 170 42 W', []],
  ])('%s: %j', (text, expected) => {
    expect(codes(text)).toEqual(expected);
  });

  it('reads what can only be a longitude as one', () => {
    expect(read('-96.571, 33.818')).toMatchObject({ latitude: 33.818, longitude: -96.571 });
  });
});

describe('faults', () => {
  it.each([
    ['', 'empty'],
    ['   ', 'empty'],
    ['hello', 'unreadable'],
    ['near the dam', 'unreadable'],
    ['33.5 30 N 96 W', 'unreadable'],
    [`33' 49° N 96° W`, 'unreadable'],
    ['3'.repeat(121), 'unreadable'],
    ['33.818', 'ambiguous'],
    ['33.818 - 96.571', 'ambiguous'],
    ['33 49.08 96', 'ambiguous'],
    ['33,818 -96,571', 'ambiguous'],
    ['33.8 N 96.5', 'ambiguous'],
    ['N 33.8 96.5', 'ambiguous'],
    ['33 N 96 S', 'ambiguous'],
    ['lat 33 lat 96', 'ambiguous'],
    ['33 49 05 10 N 96 W', 'ambiguous'],
    ['1e5, 3', 'ambiguous'],
    ['-33 S 96 W', 'sign-and-letter'],
    ['33 N -96 W', 'sign-and-letter'],
    ['91 N 96 W', 'latitude-out-of-range'],
    ['95, 95', 'latitude-out-of-range'],
    ['90 00.001 N 96 W', 'latitude-out-of-range'],
    ['33 N 180.0001 W', 'longitude-out-of-range'],
    ['33, 196', 'longitude-out-of-range'],
    ['33 60 N 96 W', 'minutes-out-of-range'],
    ['33 49 60.0 N 96 34 15 W', 'seconds-out-of-range'],
    ['QC 2204 4811', 'grid-zone-missing'],
    ['14S QC 2204 481', 'grid-digits-uneven'],
    ['14S QC 22 04 48 11', 'grid-digits-uneven'],
    ['14S QC 22048481151', 'grid-digits-uneven'],
    ['14S QC 220484811511', 'grid-digits-uneven'],
    ['14S QC', 'grid-digits-uneven'],
    ['14S QI 22 48', 'no-such-grid-square'],
    ['14I QC 22 48', 'no-such-grid-square'],
    ['61S QC 22 48', 'no-such-grid-square'],
    ['14S AC 22 48', 'no-such-grid-square'],
    ['14S QM 22 48', 'no-such-grid-square'],
    ['14T QC 22 48', 'no-such-grid-square'],
  ])('%s: %s', (text, code) => {
    const reading = parsePosition(text);
    expect(reading).toMatchObject({ ok: false, code });
    if (!reading.ok) expect(reading.detail.length).toBeGreaterThan(20);
  });

  it('tells how to write degrees and minutes that were run together', () => {
    const reading = parsePosition('3349.08 N 09634.26 W');
    expect(reading).toMatchObject({ code: 'latitude-out-of-range' });
    expect(reading.ok ? '' : reading.detail).toContain('33 49.08');
  });

  it('never throws, and never returns a place that is not on Earth', () => {
    const pieces = fc.constantFrom(
      ...'33 49.08 96 -96.571 N S E W ° ′ ″ - + , ; 14S QC 22048 48115 lat lon 60 . 180 90'.split(' '),
      ' ',
    );
    const text = fc.oneof(
      fc.string(),
      fc.string({ unit: 'grapheme' }),
      fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join('')),
      fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join(' ')),
    );
    fc.assert(
      fc.property(text, (written) => {
        const reading = parsePosition(written);
        if (!reading.ok) return;
        expect(Math.abs(reading.latitude)).toBeLessThanOrEqual(90);
        expect(Math.abs(reading.longitude)).toBeLessThanOrEqual(180);
        expect(reading.precisionM).toBeGreaterThan(0);
      }),
      { numRuns: 3_000 },
    );
  });
});
