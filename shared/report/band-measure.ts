import type { Quantity, Unit } from '../record/quantity-as-entered.js';
import type { Band, BandScale } from './report-form.js';

/** The band of a form that a measure falls into, or those between which a person has to choose. */
export type Banded =
  { readonly band: Band } | { readonly between: readonly Band[]; readonly measure: number };

/** Exact: the international foot and mile, and the nautical mile (NIST SP 811, appendix B). */
const FEET: Readonly<Partial<Record<Unit, number>>> = {
  ft: 1,
  in: 1 / 12,
  yd: 3,
  mi: 5280,
  nmi: 1852 / 0.3048,
  m: 1 / 0.3048,
  km: 1000 / 0.3048,
};
const MILES_PER_HOUR: Readonly<Partial<Record<Unit, number>>> = {
  mph: 1,
  kn: 1852 / 1609.344,
  'km/h': 1 / 1.609344,
  'm/s': 3600 / 1609.344,
};

/** So small a difference comes from the arithmetic and not from the water. */
const STEPS = 1e9;

/**
 * A measure in the unit of a form; null where it measures something else.
 * @example inUnit({ amount: 10, unit: 'kn' }, 'mph') // 11.507794480
 */
export function inUnit({ amount, unit }: Quantity, wanted: BandScale['unit']): number | null {
  const factor = (wanted === 'ft' ? FEET : MILES_PER_HOUR)[unit];
  return factor === undefined ? null : Math.round(amount * factor * STEPS) / STEPS;
}

/**
 * Puts a measure into a band of a form. Where the form gives an edge to two bands, to none, or a half has to be rounded
 * across one, nothing is guessed: a person is asked.
 * @example bandMeasure({ amount: 20, unit: 'mph' }, texas.wind) // { band: { label: 'Moderate', … } }
 * @example bandMeasure({ amount: 2, unit: 'ft' }, texas.water) // { between: [choppy, rough], measure: 2 }
 */
export function bandMeasure(quantity: Quantity, scale: BandScale): Banded | null {
  const measure = inUnit(quantity, scale.unit);
  if (measure === null) return null;
  const bands = [...new Set(readings(measure, scale).flatMap((reading) => bandsAt(reading, scale.bands)))];
  const [only, ...more] = bands;
  return only !== undefined && more.length === 0 ? { band: only } : { between: bands, measure };
}

/** The whole numbers for which a measure may stand: a half is as near to the one as to the other. */
function readings(measure: number, { whole }: BandScale): number[] {
  if (whole !== true) return [measure];
  return measure % 1 === 0.5 ? [measure - 0.5, measure + 0.5] : [Math.round(measure)];
}

/** The bands that hold a number; the two beside it where none does. */
function bandsAt(number: number, bands: readonly Band[]): Band[] {
  const holding = bands.filter((band) => isIn(number, band));
  if (holding.length > 0) return holding;
  const below = bands.findLast(({ to = Infinity }) => to <= number);
  const above = bands.find(({ from }) => from >= number);
  return [below, above].filter((band) => band !== undefined);
}

function isIn(
  number: number,
  { from, to = Infinity, fromIncluded = true, toIncluded = true }: Band,
): boolean {
  return (fromIncluded ? number >= from : number > from) && (toIncluded ? number <= to : number < to);
}
