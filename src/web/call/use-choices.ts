import type { CallableCraft } from '../../../shared/call/match-craft.js';
import type { Asked } from '../ask/use-ask.js';
import { useAsk } from '../ask/use-ask.js';
import { useAskAll } from '../ask/use-ask-all.js';
import { useSession } from '../session/session.js';

export interface ChoiceCraft extends CallableCraft {
  readonly id: string;
}

export interface ChoicePlace {
  readonly id: string;
  readonly name: string;
  readonly alsoCalled: readonly string[];
  readonly latitude: number | null;
  readonly longitude: number | null;
  readonly directions: string | null;
}

export interface StationNumber {
  readonly id: string;
  readonly of: string;
  readonly name: string;
  readonly phone?: string;
  readonly channel?: string;
  readonly note?: string;
}

export interface ChoiceStation {
  readonly id: string;
  readonly name: string;
  readonly timeZone: string;
  readonly address: string | null;
  readonly latitude: number | null;
  readonly longitude: number | null;
  readonly numbers: readonly StationNumber[];
}

export interface Choices {
  readonly craft: readonly ChoiceCraft[];
  readonly places: readonly ChoicePlace[];
  readonly stations: readonly ChoiceStation[];
}

/** For help: what the business calls besides is nothing for this page. */
const FOR_HELP: ReadonlySet<string> = new Set(['dispatch', 'wardens', 'coast-guard', 'tow', 'hospital']);

/** As the fleet lists them: what is not known of a thing is absent. */
type Listed<Thing> = { readonly id: string } & Partial<Thing>;

/** What a call chooses from, kept on the device; empty lists while they load, since a call waits for nothing. */
export function useChoices(): Choices & Pick<Asked<unknown>, 'keptAt'> {
  const { device, me } = useSession();
  const byPerson = device === null && me !== null;
  const own = useAsk<Choices>(device === null ? null : '/api/device/fleet', { keep: true });
  const craft = useAskAll<Listed<ChoiceCraft>>(byPerson ? '/api/craft' : null, { keep: true });
  const places = useAskAll<Listed<ChoicePlace>>(byPerson ? '/api/places' : null, { keep: true });
  const stations = useAskAll<Listed<ChoiceStation>>(byPerson ? '/api/stations' : null, { keep: true });
  if (own.data !== undefined) return { ...own.data, keptAt: own.keptAt };
  return {
    craft: (craft.data ?? []).map(craftOf),
    places: (places.data ?? []).map(placeOf),
    stations: (stations.data ?? []).map(stationOf),
    keptAt: craft.keptAt,
  };
}

function craftOf({
  id,
  unitName = '',
  type = '',
  colours = [],
  registrationNumber = null,
}: Listed<ChoiceCraft>) {
  return { id, unitName, type, colours, registrationNumber };
}

function placeOf(place: Listed<ChoicePlace>): ChoicePlace {
  const { id, name = '', alsoCalled = [], latitude = null, longitude = null, directions = null } = place;
  return { id, name, alsoCalled, latitude, longitude, directions };
}

function stationOf(station: Listed<ChoiceStation>): ChoiceStation {
  const {
    id,
    name = '',
    timeZone = '',
    address = null,
    latitude = null,
    longitude = null,
    numbers = [],
  } = station;
  return {
    id,
    name,
    timeZone,
    address,
    latitude,
    longitude,
    numbers: numbers.filter((one) => FOR_HELP.has(one.of)),
  };
}
