import {
  engineDrives,
  fuels,
  hullMaterials,
  propulsions,
  slugsOf,
  vesselTypes,
} from '../vocabulary/vessel-types.js';
import { wholeNumber, words } from './fleet-values.js';
import { Needed, Value } from './record-members.js';
import { uuid } from './record-requests.dto.js';
import { day, listOf, number, oneOf } from './record-values.js';

/**
 * A craft of the fleet. Hull and registration numbers are kept as they were typed: what is odd about them comes back
 * as remarks and is never refused, as the number on the boat may be just as odd.
 */
export class FleetCraftDto {
  @Needed(words('what it is called at the dock, such as PWC 7', 60))
  unitName: string;

  /** A term of 33 CFR 174.19(a)(11). */
  @Needed(oneOf(slugsOf(vesselTypes)))
  type: string;

  @Value(listOf(words('a colour', 40), 'colours'))
  colours?: string[];

  @Value(words('the hull identification number as it stands on the hull', 60))
  hullNumber?: string;

  @Value(words('the registration number as it stands on the bow', 60))
  registrationNumber?: string;

  @Value(oneOf(slugsOf(hullMaterials)))
  hullMaterial?: string;

  @Value(oneOf(slugsOf(propulsions)))
  propulsion?: string;

  @Value(oneOf(slugsOf(engineDrives)))
  engineDrive?: string;

  @Value(oneOf(slugsOf(fuels)))
  fuel?: string;

  @Value(words('the make', 80))
  make?: string;

  @Value(words('the model', 80))
  model?: string;

  @Value(wholeNumber(1900, 2199, 'a model year'))
  modelYear?: number;

  @Value(number(1, 500, 'a length in feet'))
  lengthFt?: number;

  @Value(words('the make of the engine', 80))
  engineMake?: string;

  @Value(words('the number on the engine', 80))
  engineNumber?: string;

  @Value(number(0, 10_000, 'a number of horsepower'))
  horsepower?: number;

  @Value(wholeNumber(1, 500, 'a number of people'))
  capacityPeople?: number;

  /** Of people, motor and gear, as the capacity plate says. */
  @Value(wholeNumber(1, 100_000, 'a number of pounds'))
  capacityLb?: number;

  /** Where it usually leaves from. */
  @Value(uuid)
  stationId?: string;

  /** The last day in the fleet. A craft is never deleted: the record speaks of it. */
  @Value(day)
  retiredOn?: string;
}
