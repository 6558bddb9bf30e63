import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Quantity, Unit } from '../../shared/record/quantity-as-entered.js';
import { bandMeasure } from '../../shared/report/band-measure.js';
import { FORM } from './report-matters.js';

function scaleOf(jurisdiction: string, what: 'wind' | 'water') {
  const form = FORM.bands.find((one) => one.jurisdiction === jurisdiction);
  if (form === undefined) throw new Error(`There is no form of ${jurisdiction}.`);
  return form[what];
}

function told(quantity: Quantity, jurisdiction: string, what: 'wind' | 'water'): string {
  const banded = bandMeasure(quantity, scaleOf(jurisdiction, what));
  if (banded === null) return 'none of it';
  return 'band' in banded
    ? banded.band.label
    : `ask: ${banded.between.map(({ label }) => label).join(' or ')}`;
}

/** Alabama MAI-9 (11/18) and Texas PWD 047-L2000 (10/2010) as they print their bands. */
const CASES: readonly (readonly [number, Unit, string, 'wind' | 'water', string])[] = [
  // The two forms band the same 20 mph apart.
  [20, 'mph', 'AL', 'wind', 'Strong'],
  [20, 'mph', 'TX', 'wind', 'Moderate'],
  // 0 is the bottom of light and all of none: none says more.
  [0, 'mph', 'AL', 'wind', 'None'],
  [1, 'mph', 'AL', 'wind', 'Light'],
  [6, 'mph', 'AL', 'wind', 'Light'],
  [7, 'mph', 'AL', 'wind', 'Moderate'],
  [14, 'mph', 'AL', 'wind', 'Moderate'],
  [15, 'mph', 'AL', 'wind', 'Strong'],
  [25, 'mph', 'AL', 'wind', 'Strong'],
  [26, 'mph', 'AL', 'wind', 'Storm'],
  [12, 'mph', 'TX', 'wind', 'Light'],
  [13, 'mph', 'TX', 'wind', 'Moderate'],
  [24, 'mph', 'TX', 'wind', 'Moderate'],
  [25, 'mph', 'TX', 'wind', 'Strong'],
  [54, 'mph', 'TX', 'wind', 'Strong'],
  [56, 'mph', 'TX', 'wind', 'Storm'],
  // Texas gives 25 to 54 to strong and over 55 to storm: 55 itself is in neither.
  [55, 'mph', 'TX', 'wind', 'ask: Strong or Storm'],
  // Whole numbers alone are printed: others are rounded, and a half between two bands is asked.
  [6.4, 'mph', 'AL', 'wind', 'Light'],
  [6.6, 'mph', 'AL', 'wind', 'Moderate'],
  [6.5, 'mph', 'AL', 'wind', 'ask: Light or Moderate'],
  [10.5, 'mph', 'AL', 'wind', 'Moderate'],
  // 10 kn are 11.5 mph and a little.
  [10, 'kn', 'TX', 'wind', 'Light'],
  [11.3, 'kn', 'TX', 'wind', 'Moderate'],
  [40, 'km/h', 'AL', 'wind', 'Strong'],
  [10, 'm/s', 'TX', 'wind', 'Moderate'],
  // "Under 6 in" and "over 6 ft" settle those two ends; 2 ft is in both choppy and rough.
  [5.99, 'in', 'TX', 'water', 'Calm'],
  [6, 'in', 'TX', 'water', 'Choppy'],
  [23, 'in', 'AL', 'water', 'Choppy'],
  [24, 'in', 'AL', 'water', 'ask: Choppy or Rough'],
  [2, 'ft', 'TX', 'water', 'ask: Choppy or Rough'],
  [2.01, 'ft', 'TX', 'water', 'Rough'],
  [6, 'ft', 'TX', 'water', 'Rough'],
  [6.01, 'ft', 'TX', 'water', 'Very rough'],
  [1, 'm', 'US', 'water', 'Rough'],
  // A slip of units is no band at all.
  [3, 'ft', 'TX', 'wind', 'none of it'],
];

describe('the bands of forms', () => {
  it.each(CASES)('puts %d %s into the form of %s (%s): %s', (amount, unit, jurisdiction, what, expected) => {
    expect(told({ amount, unit }, jurisdiction, what)).toBe(expected);
  });

  it('puts every measure into one band, or asks between neighbours', () => {
    const scales = FORM.bands.flatMap(({ water, wind }) => [water, wind]);
    fc.assert(
      fc.property(
        fc.constantFrom(...scales),
        fc.double({ min: 0, max: 500, noNaN: true }),
        fc.boolean(),
        (scale, amount, halved) => {
          const exact = halved ? Math.round(amount * 2) / 2 : amount;
          const banded = bandMeasure({ amount: exact, unit: scale.unit }, scale);
          if (banded === null) throw new Error('The measure has the unit of the scale.');
          const bands = 'band' in banded ? [banded.band] : banded.between;
          const places = bands.map((band) => scale.bands.indexOf(band));
          expect(places.length).toBe('band' in banded ? 1 : 2);
          expect(places[places.length - 1]).toBe((places[0] ?? 0) + places.length - 1);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
