/**
 * US dollars in whole cents: `toCents(2000.01)` is `200001`. The reader of the facts has refused a third
 * decimal, so rounding only undoes binary fractions.
 */
export function toCents(dollars: number): number {
  return Math.round(dollars * 100);
}

/** `dollars(200001)` is `'$2,000.01'`; an unbounded amount has no figure and is said in words. */
export function dollars(cents: number): string {
  if (!Number.isFinite(cents)) return 'any amount';
  const whole = Math.floor(cents / 100)
    .toString()
    .replace(/\B(?=(\d{3})+$)/g, ',');
  const rest = cents % 100;
  return `$${whole}${rest === 0 ? '' : `.${String(rest).padStart(2, '0')}`}`;
}
