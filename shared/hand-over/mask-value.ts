import { isJsonObject, type JsonValue } from '../record/json-value.js';
import type { Masking } from './hand-over-profile.js';

/**
 * A value that tells less. A fact keeps how it is known and loses by whom; what the masking does not fit becomes a
 * bare mark that something is written.
 * @example maskValue('year', { value: '1990-05-17', known: 'read-off', by: 'Ann' }) // { value: '1990', known: 'read-off' }
 */
export function maskValue(how: Masking, value: JsonValue): JsonValue {
  if (isJsonObject(value) && 'value' in value && 'known' in value) {
    return { value: maskValue(how, value['value']), known: value['known'] };
  }
  return typeof value === 'string' ? maskText(how, value) : GIVEN;
}

/** Stands where something is written that is not shown. */
const GIVEN = '(given)';

function maskText(how: Masking, text: string): string {
  switch (how) {
    case 'initials':
      return initialsOf(text);
    case 'year':
      return /^\d{4}(?=-)/.exec(text)?.[0] ?? GIVEN;
    case 'last-four':
      // Of a paper that is only named, such as a passport, the end is no number and tells nothing.
      return text.length >= 8 && /\d/.test(text.slice(-4)) ? `…${text.slice(-4)}` : GIVEN;
    default:
      return GIVEN;
  }
}

/** `initialsOf('Zofia Maria Łódźka')` is `'Z. M. Ł.'`. */
export function initialsOf(name: string): string {
  const letters = name.match(/(?<![\p{L}\p{M}'’])\p{L}/gu) ?? [];
  return letters.length === 0 ? GIVEN : letters.map((letter) => `${letter.toUpperCase()}.`).join(' ');
}

const PARTS = /[\p{L}\p{M}'’-]{2,}/gu;

/**
 * The same value with names in any of its texts as initials: each name whole, and each part of it that stands alone.
 * @example maskNames(['Tom Reed'], 'Tom fell; Tom Reed was helped.') // 'T. fell; T. R. was helped.'
 */
export function maskNames(names: readonly string[], value: JsonValue): JsonValue {
  const words = [...new Set(names.flatMap((name) => [name, ...(name.match(PARTS) ?? [])]))]
    .filter((word) => word.trim().length > 1)
    .sort((one, other) => other.length - one.length);
  if (words.length === 0) return value;
  const any = words.map((word) => word.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('|');
  return maskIn(new RegExp(`(?<![\\p{L}\\p{M}])(?:${any})(?![\\p{L}\\p{M}])`, 'giu'), value);
}

function maskIn(pattern: RegExp, value: JsonValue): JsonValue {
  if (typeof value === 'string') return value.replaceAll(pattern, initialsOf);
  if (Array.isArray(value)) return value.map((one: JsonValue) => maskIn(pattern, one));
  if (!isJsonObject(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([name, one]) => [name, maskIn(pattern, one)]));
}
