/**
 * Three-valued truth. An unknown never counts as a no: every step of a determination works on these
 * three values, and only a person's answer turns `unknown` into one of the other two.
 */
export type Truth = 'true' | 'false' | 'unknown';

/** A fact as a person answers it. */
export type Ternary = 'yes' | 'no' | 'unknown';

/** `truthOf('yes')` is `'true'`; an absent fact is unknown. */
export function truthOf(answer: Ternary | undefined): Truth {
  if (answer === 'yes') return 'true';
  if (answer === 'no') return 'false';
  return 'unknown';
}

/** `not('unknown')` is `'unknown'`. */
export function not(value: Truth): Truth {
  if (value === 'true') return 'false';
  if (value === 'false') return 'true';
  return 'unknown';
}

/** False when any part is false, else unknown when any is unknown: `allOf(['true', 'unknown'])` is `'unknown'`. */
export function allOf(values: readonly Truth[]): Truth {
  if (values.includes('false')) return 'false';
  return values.includes('unknown') ? 'unknown' : 'true';
}

/** True when any part is true, else unknown when any is unknown: `anyOf(['false', 'unknown'])` is `'unknown'`. */
export function anyOf(values: readonly Truth[]): Truth {
  if (values.includes('true')) return 'true';
  return values.includes('unknown') ? 'unknown' : 'false';
}
