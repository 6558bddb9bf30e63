import type { FieldError } from '../kernel/field-error.js';
import type { Reading } from '../kernel/reading.js';
import { phone, positionAsWritten, readFleetInput, words } from './fleet-values.js';
import { Items, Needed, Value } from './record-members.js';
import { day, id, oneOf, stateCode, timeZone } from './record-values.js';

export const STATION_NUMBERS = [
  'dispatch',
  'wardens',
  'coast-guard',
  'tow',
  'hospital',
  'insurer',
  'counsel',
  'other',
] as const;

/** One line of the list of whom to call. */
export class StationNumberDto {
  @Needed(id)
  id: string;

  @Needed(oneOf(STATION_NUMBERS))
  of: (typeof STATION_NUMBERS)[number];

  @Needed(words('who answers', 120))
  name: string;

  @Value(phone)
  phone?: string;

  @Value(words('the radio channel, such as VHF 16', 40))
  channel?: string;

  @Value(words('hours, or what to ask for', 300))
  note?: string;
}

/** Where craft leave from, with the numbers that are called from there. */
export class StationDto {
  @Needed(words('the name of the station', 120))
  name: string;

  @Needed(timeZone)
  timeZone: string;

  @Value(stateCode)
  state?: string;

  @Value(words('the address that an ambulance is told', 300))
  address?: string;

  @Value(positionAsWritten)
  position?: string;

  @Items(() => StationNumberDto)
  numbers?: StationNumberDto[];

  @Value(day)
  retiredOn?: string;
}

/**
 * @example readStation({ name: 'North dock', timeZone: 'America/Chicago', numbers: [{ id: 'n1', of: 'tow', name: 'Tow' }] })
 * // { ok: false, errors: [{ pointer: '/numbers/0/phone', detail: 'Give a telephone number or a radio channel.' }] }
 */
export function readStation(input: unknown): Reading<StationDto> {
  return readFleetInput(StationDto, input, findUnreachable);
}

function findUnreachable({ numbers = [] }: StationDto): FieldError[] {
  return numbers.flatMap((number, place) =>
    number.phone === undefined && number.channel === undefined
      ? [{ pointer: `/numbers/${place}/phone`, detail: 'Give a telephone number or a radio channel.' }]
      : [],
  );
}
