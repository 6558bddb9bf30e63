import { checkCoordinates } from './metres-per-degree.js';
import type { Notation } from './position-reading.js';
import { usngOf, type UsngDigits } from './usng.js';

/**
 * A position for people, in any notation that `parsePosition` reads back. `decimals` are those of the last
 * number (defaults: 5 of a degree, 3 of a minute, 1 of a second: one to three metres). The grid is given to
 * the metre; for a coarser square use `usngOf`. Throws RangeError for what is no place on Earth and, on the
 * grid, outside it.
 * @example formatPosition(40.7128, -74.006, 'degrees-minutes-seconds', 2)
 * // '40° 42′ 46.08″ N, 74° 00′ 21.60″ W'
 */
export function formatPosition(
  latitude: number,
  longitude: number,
  notation: Notation,
  decimals?: number,
): string {
  checkCoordinates(latitude, longitude);
  const inLetters = (parts: 2 | 3, places: number): string =>
    [
      `${angle(latitude, parts, places)} ${latitude < 0 ? 'S' : 'N'}`,
      `${angle(longitude, parts, places)} ${longitude < 0 ? 'W' : 'E'}`,
    ].join(', ');
  switch (notation) {
    case 'decimal-degrees':
      return [latitude, longitude].map((degrees) => plainDegrees(degrees, decimals ?? 5)).join(', ');
    case 'degrees-minutes':
      return inLetters(2, decimals ?? 3);
    case 'degrees-minutes-seconds':
      return inLetters(3, decimals ?? 1);
    case 'usng':
      return usngOf(latitude, longitude, METRE_DIGITS);
  }
}

const METRE_DIGITS: UsngDigits = 10;
const MARKS = ['°', '′', '″'];

function plainDegrees(degrees: number, decimals: number): string {
  return degrees.toFixed(decimals).replace(/^-(?=[0.]*$)/, '');
}

/** Counts whole steps of the last decimal, so that 59.9996 seconds carry into the minute and the degree. */
function angle(degrees: number, parts: 2 | 3, decimals: number): string {
  const last = 60 ** (parts - 1);
  const stepsInUnit = 10 ** decimals;
  const steps = Math.round(Math.abs(degrees) * last * stepsInUnit);
  const units = Math.floor(steps / stepsInUnit);
  const fraction = decimals === 0 ? '' : `.${String(steps % stepsInUnit).padStart(decimals, '0')}`;
  const numbers = [Math.floor(units / last)];
  for (let each = last / 60; each >= 1; each /= 60) numbers.push(Math.floor(units / each) % 60);
  return numbers
    .map((number, part) => {
      const digits = String(number).padStart(part === 0 ? 1 : 2, '0');
      return `${digits}${part === parts - 1 ? fraction : ''}${MARKS[part]}`;
    })
    .join(' ');
}
