import { stampInstant } from '../../../shared/call/stamp.js';
import { isJsonObject, type JsonValue } from '../../../shared/record/json-value.js';
import { readInstant } from '../../../shared/time/read-instant.js';
import { zoneClock } from '../../../shared/time/zone-clock.js';
import type { PaperRow } from './paper/blocks.js';
import { isKnown, isStamp } from './paper/tell-fact.js';
import { isDay, isInstant } from '../../../shared/time/is-instant.js';

export type PacketCell = string | number | Date;

/** The longest text of a cell that spreadsheets take (ECMA-376 implementations); the whole of it stands in record.json. */
const LONGEST_CELL = 32_767;

export function textCell(text: string): string {
  return text.length <= LONGEST_CELL ? text : `${text.slice(0, LONGEST_CELL - 1)}…`;
}

/** Spreadsheets know no zones: the wall clock of the place as a date, to the minute. */
export function localTimeCell(instant: string | number, timeZone: string): Date {
  const ms = typeof instant === 'number' ? instant : readInstant(instant);
  return new Date(`${zoneClock(timeZone).format(ms).slice(0, 16)}Z`);
}

/** What stands in a field as a number, a day or a time where it is one, else in the words of the paper. */
export function cellOf(
  text: string,
  field: PaperRow['field'],
  timeZone: string,
): { value: PacketCell; unit: string } {
  const value = bareOf(field?.value);
  if (typeof value === 'number') return { value, unit: field?.unit ?? '' };
  if (isJsonObject(value) && typeof value['amount'] === 'number' && typeof value['unit'] === 'string') {
    return { value: value['amount'], unit: value['unit'] };
  }
  if (isStamp(value)) return { value: localTimeCell(stampInstant(value), timeZone), unit: '' };
  if (typeof value === 'string' && isInstant(value))
    return { value: localTimeCell(value, timeZone), unit: '' };
  if (typeof value === 'string' && isDay(value)) return { value: new Date(value), unit: '' };
  return { value: textCell(text), unit: '' };
}

function bareOf(value: JsonValue | undefined): JsonValue {
  if (value === undefined) return null;
  return isKnown(value) ? (value['value'] ?? null) : value;
}
