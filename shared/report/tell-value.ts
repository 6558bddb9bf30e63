import { inUnit } from './band-measure.js';
import { deriveSi } from '../record/derive-si.js';
import { UNITS_OF, type Quantity } from '../record/quantity-as-entered.js';
import type { Occurred, Position } from '../record/time-and-place.js';
import { formatPosition } from '../place/format-position.js';
import { localTime, tellDay } from '../time/tell-time.js';
import { readInstant } from '../time/read-instant.js';
import { zoneClock } from '../time/zone-clock.js';
import { zoneName } from '../time/zone-name.js';
import type { TermList } from './report-form.js';
import { tellTerm } from './tell-term.js';
import { isInstant } from '../time/is-instant.js';

/** With what values are told. */
export interface Telling {
  readonly timeZone: string;
  readonly terms?: TermList | undefined;
}

/** Words by which people say, in a field for words, that a thing is not known. */
const NOT_KNOWN = /^(?:unknown|not known|nobody knows|cannot be known|unk\.?|n\/k|\?+)\.?$/i;

/**
 * Whether a value says that somebody looked and does not know.
 * @example saysNotKnown('unknown') // true
 * @example saysNotKnown(['unknown']) // true
 */
export function saysNotKnown(value: unknown): boolean {
  if (Array.isArray(value)) return value.length > 0 && value.every(saysNotKnown);
  return typeof value === 'string' && NOT_KNOWN.test(value.trim());
}

/** Whether there is nothing at all. */
export function isNothing(value: unknown): boolean {
  if (value === undefined || value === null) return true;
  if (typeof value === 'string') return value.trim() === '';
  return Array.isArray(value) && value.length === 0;
}

/**
 * A value of the record as it is written on paper: local time, units of the forms beside those that were entered,
 * words of the vocabulary.
 * @example tellValue({ amount: 10, unit: 'kn' }, { timeZone: 'America/Chicago' }) // '10 kn (11.5 mph)'
 */
export function tellValue(value: unknown, telling: Telling): string {
  if (Array.isArray(value)) {
    const told = value.map((one) => tellValue(one, telling));
    return telling.terms === 'casualty-types' ? inOrder(told) : told.join('; ');
  }
  if (typeof value === 'string') {
    return isInstant(value) ? tellTime(value, telling.timeZone) : tellDay(tellTerm(value, telling.terms));
  }
  if (typeof value === 'object' && value !== null) return tellObject(value, telling);
  return String(value);
}

/** `inOrder(['Collision', 'Fall overboard'])` is `'Collision, then fall overboard'`. */
export function inOrder(events: readonly string[]): string {
  return events.map((event, place) => (place === 0 ? event : lowered(event))).join(', then ');
}

const lowered = (words: string): string =>
  /^\p{Lu}\p{Ll}/u.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words;

/** `tellTime('2026-06-13T16:20:00Z', 'America/Chicago')` is `'Sat 13 June 2026 11:20'`. */
export function tellTime(instant: string, timeZone: string): string {
  // Paper lies about for years: the year is always told.
  return localTime(zoneClock(timeZone).format(readInstant(instant)), 0);
}

/**
 * The same with the zone as clocks and papers call it, which says whether summer time held.
 * @example tellZonedTime('2026-06-13T16:20:00Z', 'America/Chicago') // 'Sat 13 June 2026 11:20 CDT'
 */
export function tellZonedTime(instant: string, timeZone: string): string {
  return `${tellTime(instant, timeZone)} ${zoneName(instant, timeZone)}`;
}

function tellObject(value: object, telling: Telling): string {
  if ('unit' in value) return tellQuantity(value as Quantity);
  if ('precision' in value) return tellOccurred(value as Occurred, telling.timeZone);
  if ('latitude' in value) return tellPosition(value as Position);
  if ('nature' in value || 'bodyPart' in value || 'extent' in value) return tellInjury(value, telling);
  return Object.values(value)
    .filter((one) => !isNothing(one))
    .map((one) => tellValue(one, telling))
    .join('; ');
}

function tellQuantity(quantity: Quantity): string {
  const { amount, unit } = quantity;
  const said = `${amount} ${unit}`;
  const speed = (UNITS_OF.speed as readonly string[]).includes(unit);
  if (speed) return unit === 'mph' ? said : `${said} (${round(inUnit(quantity, 'mph') ?? amount)} mph)`;
  const length = (UNITS_OF.length as readonly string[]).includes(unit);
  if (length)
    return unit === 'ft' || unit === 'mi' ? said : `${said} (${round(inUnit(quantity, 'ft') ?? amount)} ft)`;
  if (unit === '°C') return `${said} (${round((deriveSi(quantity).amount * 9) / 5 + 32)} °F)`;
  return said;
}

function round(number: number): string {
  return String(Math.round(number * 10) / 10);
}

function tellOccurred({ at, until, precision, withinMinutes }: Occurred, timeZone: string): string {
  if (until !== undefined) return `Between ${tellTime(at, timeZone)} and ${tellZonedTime(until, timeZone)}`;
  if (precision === 'about') {
    const give = withinMinutes === undefined ? '' : `, give or take ${withinMinutes} min`;
    return `About ${tellZonedTime(at, timeZone)}${give}`;
  }
  return tellZonedTime(at, timeZone);
}

function tellPosition({ latitude, longitude, accuracyM }: Position): string {
  const give = accuracyM === undefined ? '' : `, within ${accuracyM}\u00a0m`;
  return `${formatPosition(latitude, longitude, 'degrees-minutes')} (WGS 84)${give}`;
}

function tellInjury(injury: object, telling: Telling): string {
  const { nature, bodyPart, extent } = injury as Record<string, { value?: unknown } | undefined>;
  const told = [nature, bodyPart, extent].flatMap((fact) =>
    isNothing(fact?.value) ? [] : [tellValue(fact?.value, telling)],
  );
  return told.join(', ');
}
