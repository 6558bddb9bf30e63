import { explainHullNumber } from '../../../shared/identifiers/explain-hull-number.js';
import { explainRegistrationNumber } from '../../../shared/identifiers/explain-registration-number.js';
import { parsePosition } from '../../../shared/place/parse-position.js';
import { FleetCraftDto } from '../../../shared/wire/fleet-craft.dto.js';
import { FleetPlaceDto } from '../../../shared/wire/fleet-place.dto.js';
import { PolicyDto, readPolicy } from '../../../shared/wire/fleet-policy.dto.js';
import { readStation, StationDto } from '../../../shared/wire/fleet-station.dto.js';
import { readFleetInput } from '../../../shared/wire/fleet-values.js';
import { CraftRow, ONE_UNIT_NAME } from './database/craft.row.js';
import { PlaceRow } from './database/place.row.js';
import { PolicyRow } from './database/policy.row.js';
import { StationRow } from './database/station.row.js';
import type { KeptKind, Reference } from './kept-kind.js';

export const CRAFT: KeptKind<FleetCraftDto, CraftRow> = {
  kind: 'craft',
  path: '/api/craft',
  row: CraftRow,
  shape: FleetCraftDto,
  read: (input) => readFleetInput(FleetCraftDto, input),
  nameOf: ({ unitName }) => unitName,
  fresh: { inService: true },
  beside: explainNumbers,
  listed: ({ inService }) => ({ inService }),
  references: { in: stationOf, to: StationRow },
  uniqueName: {
    rule: ONE_UNIT_NAME,
    pointer: '/unitName',
    detail: 'Another craft in the fleet goes by that name: every call for it would be a question.',
  },
};

export const STATION: KeptKind<StationDto, StationRow> = {
  kind: 'station',
  path: '/api/stations',
  row: StationRow,
  shape: StationDto,
  read: readStation,
  nameOf: ({ name }) => name,
  derived: degreesOf,
  beside: explainPosition,
};

export const PLACE: KeptKind<FleetPlaceDto, PlaceRow> = {
  kind: 'place',
  path: '/api/places',
  row: PlaceRow,
  shape: FleetPlaceDto,
  read: (input) => readFleetInput(FleetPlaceDto, input),
  nameOf: ({ name }) => name,
  derived: degreesOf,
  beside: explainPosition,
  references: { in: stationOf, to: StationRow },
};

export const POLICY: KeptKind<PolicyDto, PolicyRow> = {
  kind: 'policy',
  path: '/api/policies',
  row: PolicyRow,
  shape: PolicyDto,
  read: readPolicy,
  nameOf: ({ insurer, number }) => `${insurer} ${number}`,
  references: {
    in: ({ scheduledCraft }) =>
      scheduledCraft.map((id, place): Reference => ({ pointer: `/scheduledCraft/${place}`, id })),
    to: CraftRow,
  },
};

function stationOf({ stationId }: { stationId?: string }): Reference[] {
  return stationId === undefined ? [] : [{ pointer: '/stationId', id: stationId }];
}

/** The numbers in words, with what is odd about them; a number is never refused. */
function explainNumbers({ hullNumber, registrationNumber }: CraftRow): object {
  return {
    ...(hullNumber === null ? {} : { hullNumberReading: saying(explainHullNumber(hullNumber)) }),
    ...(registrationNumber === null
      ? {}
      : { registrationNumberReading: saying(explainRegistrationNumber(registrationNumber)) }),
  };
}

function saying({ explanation, remarks }: { explanation: string[]; remarks: string[] }): object {
  return { explanation, remarks };
}

function degreesOf({ position }: { position?: string }): {
  latitude: number | null;
  longitude: number | null;
} {
  const reading = position === undefined ? null : parsePosition(position);
  return reading?.ok === true
    ? { latitude: reading.latitude, longitude: reading.longitude }
    : { latitude: null, longitude: null };
}

function explainPosition({ position }: { position: string | null }): object {
  const reading = position === null ? null : parsePosition(position);
  if (reading?.ok !== true) return {};
  const { latitude, longitude, notation, precisionM, remarks } = reading;
  return { latitude, longitude, positionReading: { notation, precisionM, remarks } };
}
