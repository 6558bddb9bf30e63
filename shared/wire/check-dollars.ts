/** No single item of a rental's loss comes near it; above it the cents could no longer be exact. */
const MOST_DOLLARS = 1_000_000_000;

/**
 * What is wrong with an amount in US dollars; null when nothing is.
 * @example dollarsFault(2000.01) // null
 * @example dollarsFault(2000.001) // 'Must have at most two decimals: whole cents.'
 *
 * Decimals are tested by value. A number up to 1e9 with two decimals is the double nearest to k/100 with k
 * up to 1e11; x * 100 then errs by less than 0.0001, so rounding finds k, and k / 100 is again the nearest
 * double, x itself. Any other x differs from every such quotient. (A test by remainder fails on 0.07.)
 */
export function dollarsFault(value: unknown): string | null {
  if (typeof value !== 'number' || !Number.isFinite(value)) return 'Must be US dollars as a number.';
  if (value < 0) return 'Must be 0 or more: a loss is given without a sign.';
  if (value > MOST_DOLLARS) return 'Must be at most 1000000000 US dollars.';
  if (Math.round(value * 100) / 100 !== value) return 'Must have at most two decimals: whole cents.';
  return null;
}
