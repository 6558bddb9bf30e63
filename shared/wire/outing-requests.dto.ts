import type { FieldError } from '../kernel/field-error.js';
import type { Reading } from '../kernel/reading.js';
import type { Stamp } from '../call/stamp.js';
import { NOT_BACK_ENDS, type NotBackEnd, type Rung, RUNGS } from '../outing/not-back.js';
import { faultAt, type OutingDraft } from '../outing/read-outing-rows.js';
import { account, phone, readFleetInput, wholeNumber, words } from './fleet-values.js';
import { stamp } from './record-compounds.js';
import { Items, Needed, Value } from './record-members.js';
import { uuid } from './record-requests.dto.js';
import { day, id, instant, oneOf } from './record-values.js';

export class RiderDto {
  @Needed(id)
  id: string;

  @Needed(words('the name of somebody aboard', 120))
  name: string;

  @Value(phone)
  phone?: string;
}

/** A craft that went out, typed at the dock; what is left out is not known. */
export class OutingDto {
  /** As the craft is called: PWC 7. */
  @Needed(words('the unit of the craft, such as PWC 7', 60))
  unit: string;

  @Value(instant)
  outAt?: string;

  @Value(instant)
  dueBackAt?: string;

  @Value(words("the renter's name", 120))
  renter?: string;

  @Value(phone)
  phone?: string;

  @Value(wholeNumber(0, 500, 'how many are aboard'))
  aboard?: number;

  @Items(() => RiderDto)
  riders?: RiderDto[];

  @Value(words('the vehicle in the lot'))
  vehicle?: string;

  @Value(words('the fuel, as it was read', 60))
  fuel?: string;

  @Value(account('where they meant to go', 600))
  plan?: string;

  @Value(account('a remark', 600))
  remark?: string;
}

/** A list of craft due back, as a spreadsheet wrote it. */
export class OutingImportDto {
  @Needed({
    expected: 'the text of a list with a line of headings, separated by commas, semicolons or tabs',
    faultOf: (value) =>
      typeof value === 'string' && value.trim() !== '' && value.length <= 500_000
        ? null
        : 'Must be the text of a list, of at most 500000 characters.',
    schema: { type: 'string', minLength: 1, maxLength: 500_000 },
  })
  csv: string;

  /** The station whose clock the times are on; without it, the clock of the business. */
  @Value(uuid)
  stationId?: string;

  /** The day of times that have none; without it, today at the station. */
  @Value(day)
  day?: string;
}

/** When something was done, where that is not now. */
export class OutingMarkDto {
  @Value(instant)
  at?: string;
}

export class UndoingDto {
  @Needed(account('why it is undone', 600))
  why: string;
}

/** A craft that is not back, by its unit. */
export class OpenNotBackDto {
  /** Chosen by a phone without signal, so that times can be stamped before the service knows of it. */
  @Value(uuid)
  id?: string;

  @Needed(words('the unit of the craft, such as PWC 7', 60))
  unit: string;
}

export class SearchSheetDto {
  @Value(instant)
  lastSeenAt?: string;

  @Value(words('where it was last seen'))
  lastSeenWhere?: string;

  @Value(instant)
  lastSpokenAt?: string;

  @Value(words('the fuel left, as far as known', 60))
  fuel?: string;

  @Value(account('where they meant to go', 600))
  plan?: string;

  @Value(account('a remark', 600))
  remark?: string;
}

/** A rung of the ladder that was climbed. */
export class RungStampDto {
  @Needed(oneOf(RUNGS))
  rung: Rung;

  @Needed(stamp)
  stamp: Stamp;

  /** What was said, and their reference. */
  @Value(words('what was said', 400))
  words?: string;
}

export class NotBackEndDto {
  @Needed(oneOf(NOT_BACK_ENDS))
  ended: NotBackEnd;

  /** When, where that is not now. */
  @Value(instant)
  at?: string;

  @Value(words('where and how it was found, or who brought it back', 400))
  how?: string;
}

/** That an ending is no incident: somebody's word, with the reason. */
export class NotIncidentDto {
  @Needed(account('why it is no incident', 600))
  why: string;
}

export class OpenCountDto {
  /** Chosen by a phone without signal, so that craft can be counted before the service knows of it. */
  @Value(uuid)
  id?: string;

  /** Counts the craft of one station and those of no station; without it, the whole fleet. */
  @Value(uuid)
  stationId?: string;
}

export const COUNT_ANSWERS = ['in', 'out', 'elsewhere'] as const;
export type CountAnswer = (typeof COUNT_ANSWERS)[number];

export class CountAnswerDto {
  @Needed(words('the unit of the craft, such as PWC 7', 60))
  unit: string;

  @Needed(oneOf(COUNT_ANSWERS))
  answer: CountAnswer;

  /** Where, for a craft that is known to be elsewhere: the shop, the sheriff's yard, another station. */
  @Value(words('where it is'))
  where?: string;

  /** When somebody looked, where that is not now: an answer that waited for signal. */
  @Value(instant)
  at?: string;
}

/**
 * Reads an input of out and back by its class; every fault at its pointer.
 * @example readOutingInput(UndoingDto, {}) // { ok: false, errors: [{ pointer: '/why', … }] }
 */
export function readOutingInput<T extends object>(shape: new () => T, input: unknown): Reading<T> {
  return readFleetInput(shape, input, (value) =>
    value instanceof Object && 'dueBackAt' in value ? timeFaults(value as unknown as OutingDto) : [],
  );
}

function timeFaults({ outAt, dueBackAt }: OutingDto): FieldError[] {
  if (outAt === undefined || dueBackAt === undefined) return [];
  return Date.parse(dueBackAt) > Date.parse(outAt)
    ? []
    : [{ pointer: '/dueBackAt', detail: 'Must be later than the time at which it went out.' }];
}

/** @example readCountAnswer({ unit: 'PWC 7', answer: 'elsewhere' }).ok // false: it does not say where */
export function readCountAnswer(input: unknown): Reading<CountAnswerDto> {
  return readFleetInput(CountAnswerDto, input, ({ answer, where }) =>
    answer === 'elsewhere' && where === undefined
      ? [{ pointer: '/where', detail: 'Say where it is: the shop, an agency, another station.' }]
      : [],
  );
}

/** Checks the rows of an import as outings; each fault names row, field and fix. */
export function checkDrafts(drafts: readonly OutingDraft[]): Reading<{ row: number; outing: OutingDto }[]> {
  const errors: FieldError[] = [];
  const outings: { row: number; outing: OutingDto }[] = [];
  for (const { row, draft } of drafts) {
    const reading = readOutingInput(OutingDto, draft);
    if (reading.ok) outings.push({ row, outing: reading.value });
    else errors.push(...reading.errors.map(({ pointer, detail }) => faultAt(row, pointer.slice(1), detail)));
  }
  return errors.length > 0 ? { ok: false, errors } : { ok: true, value: outings };
}
