import { Injectable } from '@nestjs/common';
import { type ZoneClock, zoneClock } from '../../../shared/time/zone-clock.js';
import { type CraftInUse, Fleet, type FoundStation } from '../fleet/fleet.api.js';
import { refuse } from '../platform/http/refuse.js';
import { RecordSettings } from '../record/record.api.js';

/** Craft by the names that people give them, and the clocks of the stations that they leave from. */
@Injectable()
export class OutingFleet {
  constructor(
    private readonly fleet: Fleet,
    private readonly settings: RecordSettings,
  ) {}

  all(): Promise<CraftInUse[]> {
    return this.fleet.inUse();
  }

  named(unit: string): Promise<CraftInUse | null> {
    return this.fleet.craftCalled(unit);
  }

  /** @throws ProblemException 422 for a name that no craft has */
  async called(unit: string): Promise<CraftInUse> {
    return (
      (await this.fleet.craftCalled(unit)) ??
      refuse(422, 'No craft of the fleet has this name: write it as the list of craft does.', '/unit')
    );
  }

  /** A craft that something was written about; it is never deleted. */
  async byId(craftId: string): Promise<CraftInUse> {
    const craft = await this.fleet.craft(craftId);
    if (craft === null) throw new Error(`There is no craft ${craftId}.`);
    return craft;
  }

  /** @throws ProblemException 422 for an id that no station has */
  async station(stationId: string): Promise<FoundStation> {
    return (
      (await this.fleet.station(stationId)) ?? refuse(422, 'There is no station with this id.', '/stationId')
    );
  }

  /** Null for a craft of no station. */
  async stationOf({ stationId }: CraftInUse): Promise<FoundStation | null> {
    return stationId === null ? null : this.fleet.station(stationId);
  }

  /** The clock of a station, or of the business where there is none. */
  clockOf(station: FoundStation | null): ZoneClock {
    return zoneClock(station?.timeZone ?? this.settings.timeZone);
  }
}
