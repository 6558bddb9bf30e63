import type { JsonValue } from '../../../shared/record/json-value.js';
import { readWallClock } from '../../../shared/time/read-wall-clock.js';

/**
 * What was typed is kept as it was typed where it is no value yet: the form says what is wrong with it when it is saved,
 * and nothing is lost until then.
 */

/** A value as it stands in a field of text. */
export function textOf(value: JsonValue | undefined): string {
  if (typeof value === 'string') return value;
  return typeof value === 'number' ? String(value) : '';
}

/** `figureOf('12')` is 12, `figureOf('a few')` is 'a few', and nothing for an empty field. */
export function figureOf(text: string): number | string | undefined {
  const bare = text.trim().replace(',', '.');
  if (bare === '') return undefined;
  return /^-?\d+(\.\d+)?$/.test(bare) ? Number(bare) : text;
}

/** People write `$1,250.50`. */
export function dollarsOf(text: string): number | string | undefined {
  const bare = text.replaceAll(/[$,\s]/g, '');
  if (bare === '') return undefined;
  return /^\d+(\.\d{1,2})?$/.test(bare) ? Number(bare) : text;
}

/** A time of the clocks of a zone as an instant with its offset. */
export function instantOf(text: string, zone: string): string | undefined {
  if (text === '') return undefined;
  return readWallClock(text, zone) ?? text;
}
