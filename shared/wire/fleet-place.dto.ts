import { account, positionAsWritten, words } from './fleet-values.js';
import { Needed, Value } from './record-members.js';
import { uuid } from './record-requests.dto.js';
import { day, listOf, stateCode } from './record-values.js';

/** A spot on the water that people here call by a name. */
export class FleetPlaceDto {
  @Needed(words('the name of the place', 120))
  name: string;

  @Value(listOf(words('another name', 120), 'names'))
  alsoCalled?: string[];

  /** In any usual notation; it comes back in degrees. */
  @Value(positionAsWritten)
  position?: string;

  @Value(words('the body of water', 120))
  waterBody?: string;

  @Value(words('the nearest city or town', 120))
  nearestTown?: string;

  @Value(words('the county', 120))
  county?: string;

  @Value(stateCode)
  state?: string;

  @Value(account('how to get there, and what lies in the way', 2000))
  directions?: string;

  @Value(uuid)
  stationId?: string;

  @Value(day)
  retiredOn?: string;
}
