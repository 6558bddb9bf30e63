import type { CraftRow } from './database/craft.row.js';
import type { KeptThings } from './database/kept-things.js';
import type { PlaceRow } from './database/place.row.js';
import type { StationRow } from './database/station.row.js';

/** Numbers that are called while somebody needs help; whom else the business calls is nothing for a phone on a hook. */
const FOR_HELP: ReadonlySet<string> = new Set(['dispatch', 'wardens', 'coast-guard', 'tow', 'hospital']);

export interface CallChoicesParts {
  readonly craft: KeptThings<CraftRow>;
  readonly places: KeptThings<PlaceRow>;
  readonly stations: KeptThings<StationRow>;
}

/**
 * What a call for help chooses from: the craft by what stands on them, places, stations with the numbers for help.
 * It is what anybody at the dock can see, and says nothing of renters or incidents.
 */
export class CallChoices {
  constructor(private readonly parts: CallChoicesParts) {}

  async read(): Promise<object> {
    const { craft, places, stations } = this.parts;
    return {
      craft: (await craft.inUse()).map(({ id, unitName, type, colours, registrationNumber }) => ({
        id,
        unitName,
        type,
        colours: colours ?? [],
        registrationNumber,
      })),
      places: (await places.inUse()).map(({ id, name, alsoCalled, latitude, longitude, directions }) => ({
        id,
        name,
        alsoCalled: alsoCalled ?? [],
        latitude,
        longitude,
        directions,
      })),
      stations: (await stations.inUse()).map(
        ({ id, name, timeZone, address, latitude, longitude, numbers }) => ({
          id,
          name,
          timeZone,
          address,
          latitude,
          longitude,
          numbers: (numbers ?? []).filter((number) => FOR_HELP.has(number.of)),
        }),
      ),
    };
  }
}
