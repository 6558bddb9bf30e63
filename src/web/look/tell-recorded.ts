import type { Known } from '../../../shared/call/known.js';
import { formatPosition } from '../../../shared/place/format-position.js';
import { isJsonObject, type JsonObject, type JsonValue } from '../../../shared/record/json-value.js';
import type { Quantity } from '../../../shared/record/quantity-as-entered.js';
import { fieldUnit, fieldWords, valueWord } from '../../../shared/record/field-words/tell-field.js';
import { common } from '../words/common.js';
import { language } from '../words/speak.js';
import { tellInstant } from './tell-instant.js';

/** Where a value stands: the section and the path of its field, and the zone of the place for its times. */
export interface RecordedPlace {
  readonly section: string;
  readonly path: string;
  readonly timeZone?: string | undefined;
}

const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d/;
const DAY = /^\d{4}-\d\d-\d\d$/;

/**
 * A value of the record as a reader says it, in their language: local times, words of closed lists, figures with their
 * units. A fact is told without how it is known (`tellHowKnown`).
 * @example tellRecorded({ value: 'not-back', known: 'told' }, { section: 'people', path: '/people/p1/outcome' }) // 'Not back yet'
 */
export function tellRecorded(value: JsonValue | undefined, place: RecordedPlace): string {
  if (value === null || value === undefined) return '';
  if (Array.isArray(value)) {
    const each = (value as readonly JsonValue[]).map((one) => tellRecorded(one, place));
    return each.join(place.path === '/casualtyTypes' ? common.then : '; ');
  }
  if (typeof value === 'string') return tellText(value, place);
  if (typeof value === 'number') return tellFigure(value, place);
  if (typeof value === 'boolean') return valueWord(place.section, place.path, value, language());
  return tellObject(value as JsonObject, place);
}

/** How a fact is known: `Told: Ann, Sat 13 June 11:20`; undefined for what is no fact. */
export function tellHowKnown(value: JsonValue | undefined, timeZone?: string): string | undefined {
  if (!isJsonObject(value) || !('known' in value)) return undefined;
  const { known, by = '', learnedAt } = value as unknown as Known<unknown>;
  const how = fieldWords(language()).values.known[known];
  const when = learnedAt === undefined ? '' : `, ${tellInstant(learnedAt, timeZone)}`;
  return `${how}${by === '' ? '' : `: ${by}`}${when}`;
}

function tellText(text: string, { section, path, timeZone }: RecordedPlace): string {
  if (INSTANT.test(text)) return tellInstant(text, timeZone);
  if (DAY.test(text)) {
    const locale = language() === 'es' ? 'es' : 'en-GB';
    return new Date(`${text}T12:00:00Z`).toLocaleDateString(locale, {
      day: 'numeric',
      month: 'long',
      year: 'numeric',
    });
  }
  return valueWord(section, path, text, language());
}

function tellFigure(figure: number, { section, path }: RecordedPlace): string {
  const unit = fieldUnit(section, path, language());
  const digits = figure.toLocaleString('en-US', { maximumFractionDigits: 2 });
  return unit === undefined ? digits : `${digits} ${unit}`;
}

function tellObject(value: JsonObject, place: RecordedPlace): string {
  const { parts, values } = fieldWords(language());
  if ('known' in value) return tellRecorded(value['value'], place);
  if ('how' in value) return tellRecorded(value['at'], place);
  if ('unit' in value) {
    const { amount, unit } = value as unknown as Quantity;
    return `${amount} ${unit}`;
  }
  if ('low' in value) return parts.range(tellBare(value['low'], place), tellRecorded(value['high'], place));
  if ('latitude' in value) {
    const { latitude, longitude, accuracyM } = value;
    const where = formatPosition(Number(latitude), Number(longitude), 'degrees-minutes');
    return accuracyM === undefined ? where : `${where}, ${parts.within(Number(accuracyM))}`;
  }
  if ('precision' in value) {
    const { at, until, precision, withinMinutes } = value;
    const from = tellRecorded(at, place);
    if (until !== undefined) return parts.between(from, tellRecorded(until, place));
    if (precision !== 'about') return from;
    const give = withinMinutes === undefined ? '' : `, ${parts.give(Number(withinMinutes))}`;
    return `${values.precision.about} ${from}${give}`;
  }
  return Object.entries(value)
    .filter(([name]) => name !== 'id')
    .map(([, part]) => tellRecorded(part, place))
    .join('; ');
}

/** Without its unit, which stands behind the upper end. */
function tellBare(value: JsonValue | undefined, place: RecordedPlace): string {
  return typeof value === 'number' ? value.toLocaleString('en-US') : tellRecorded(value, place);
}
