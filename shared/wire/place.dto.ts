import { isStateCode } from '../place/state-codes.js';
import type { Place } from '../record/incident-facts.js';
import { isTimeZone } from './check-time-zone.js';
import { Fact, ListOf, MayBeAbsent, NumberFact, TextFact } from './declare-fact.js';

/** What a state code must be; also used for the state that numbered a vessel. */
export function stateCodeFault(value: unknown): string | null {
  return typeof value === 'string' && isStateCode(value)
    ? null
    : 'Must be the two capital letters by which the postal service knows a state, DC or a territory, such as TX.';
}

function timeZoneFault(value: unknown): string | null {
  return typeof value === 'string' && isTimeZone(value)
    ? null
    : 'Must be the IANA name of a time zone, such as America/Chicago. An offset is not a name.';
}

/** Where it happened. */
export class PlaceDto implements Place {
  @MayBeAbsent()
  @NumberFact(-90, 90, 'a number of degrees from -90 to 90, north positive (WGS 84)')
  latitude?: number;

  @MayBeAbsent()
  @NumberFact(-180, 180, 'a number of degrees from -180 to 180, east positive (WGS 84)')
  longitude?: number;

  @MayBeAbsent()
  @ListOf('state codes, such as TX', stateCodeFault)
  states?: string[];

  @MayBeAbsent()
  @Fact('the IANA name of a time zone', timeZoneFault)
  timeZone?: string;

  @MayBeAbsent()
  @TextFact()
  description?: string;

  @MayBeAbsent()
  @NumberFact(0, Number.MAX_VALUE, 'a number of metres, 0 or more')
  accuracyM?: number;
}
