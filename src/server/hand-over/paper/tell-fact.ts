import type { Known } from '../../../../shared/call/known.js';
import type { Stamp } from '../../../../shared/call/stamp.js';
import { stampInstant } from '../../../../shared/call/stamp.js';
import type { Masking } from '../../../../shared/hand-over/hand-over-profile.js';
import { fieldUnit, fieldWords, valueWord } from '../../../../shared/record/field-words/tell-field.js';
import { isJsonObject, type JsonObject, type JsonValue } from '../../../../shared/record/json-value.js';
import { tellMoney } from '../../../../shared/report/tell-money.js';
import { tellSource } from '../../../../shared/report/tell-source.js';
import { tellTerm } from '../../../../shared/report/tell-term.js';
import { inOrder, tellTime, tellValue } from '../../../../shared/report/tell-value.js';
import { tellDay } from '../../../../shared/time/tell-time.js';
import { nameOf, type Names } from './name-things.js';
import { isInstant } from '../../../../shared/time/is-instant.js';

/** A field of the packet, with what is needed to tell it. */
export interface FieldToTell {
  readonly section: string;
  readonly path: string;
  readonly value: JsonValue;
  readonly names: Names;
  readonly timeZone: string;
  readonly masked: Masking | undefined;
}

export const MASKED_WORDS: Readonly<Record<Masking, string>> = {
  initials: 'initials in place of the name',
  unnamed: 'without who said it',
  year: 'the year alone',
  'last-four': 'the last four characters alone, or that it was given',
  'no-metadata': 'a copy without what the camera wrote into it',
  blurred: 'a copy with faces covered',
};

/** What is recorded, and how it is known, in words. */
export function tellFact(field: FieldToTell): { text: string; known: string } {
  const { value, timeZone, masked } = field;
  const mark = masked === undefined ? '' : `Masked: ${MASKED_WORDS[masked]}`;
  if (isKnown(value)) {
    const known = tellSource(value as unknown as Known<unknown>, timeZone);
    return {
      text: tellPlain(field, value['value'] ?? null),
      known: [known, mark].filter(Boolean).join('. '),
    };
  }
  if (isStamp(value)) {
    const how = fieldWords('en').values.stamped[value.how];
    return { text: tellStamp(value, timeZone), known: [how, mark].filter(Boolean).join('. ') };
  }
  return { text: tellPlain(field, value), known: mark };
}

export function isKnown(value: JsonValue): value is JsonObject {
  return isJsonObject(value) && 'value' in value && 'known' in value;
}

export function isStamp(value: JsonValue | undefined): value is JsonObject & Stamp {
  return isJsonObject(value) && typeof value['at'] === 'string' && typeof value['how'] === 'string';
}

/** By the service's clock; what the other side's clock said stands behind it. */
export function tellStamp(stamp: Stamp, timeZone: string): string {
  const at = tellTime(new Date(stampInstant(stamp)).toISOString(), timeZone);
  return stamp.theirs === undefined ? at : `${at} (by their clock ${tellTime(stamp.theirs, timeZone)})`;
}

function tellPlain(field: FieldToTell, value: JsonValue): string {
  const { section, path, names, timeZone } = field;
  const member = path.slice(path.lastIndexOf('/') + 1);
  if (Array.isArray(value)) {
    const told = value.map((one: JsonValue) => tellPlain(field, one));
    return member === 'casualtyTypes' ? inOrder(told) : told.join('; ');
  }
  if (typeof value === 'boolean') return valueWord(section, path, value, 'en');
  if (typeof value === 'number') return tellNumber(section, path, value);
  if (typeof value !== 'string') return tellObject(section, path, value, timeZone);
  if (isInstant(value)) return tellTime(value, timeZone);
  if (member === 'states' || member === 'stateOfNumber') return tellTerm(value, 'states');
  return nameOf(names, member, value) ?? tellDay(valueWord(section, path, value, 'en'));
}

function tellObject(section: string, path: string, value: JsonValue, timeZone: string): string {
  const isAmount = fieldUnit(section, path, 'en') === fieldWords('en').units.dollars;
  return isAmount ? tellMoney(value) : tellValue(value, { timeZone, terms: 'words' });
}

function tellNumber(section: string, path: string, value: number): string {
  const unit = fieldUnit(section, path, 'en');
  if (unit === undefined) return String(value);
  if (unit === fieldWords('en').units.dollars) return tellMoney(value);
  // Figure and unit stay on one line.
  return `${value}\u00a0${value === 1 ? (ONE[unit] ?? unit) : unit}`;
}

const ONE: Readonly<Record<string, string>> = {
  hours: 'hour',
  days: 'day',
  years: 'year',
  people: 'person',
  times: 'time',
  pieces: 'piece',
};
