import { STANDINGS } from '../../../shared/record/service-step.js';
import { GRAVITIES } from '../../../shared/record/weigh-consequence.js';
import { FleetCraftDto } from '../../../shared/wire/fleet-craft.dto.js';
import { FleetPlaceDto } from '../../../shared/wire/fleet-place.dto.js';
import { PolicyDto } from '../../../shared/wire/fleet-policy.dto.js';
import { CraftNoteDto, ReleaseAmountDto } from '../../../shared/wire/fleet-requests.dto.js';
import { StationDto } from '../../../shared/wire/fleet-station.dto.js';
import { STEP_SHAPES } from '../../../shared/wire/read-service-step.js';
import type { Shape } from '../../../shared/wire/record-members.js';
import { schemaOf } from '../../../shared/wire/record-schema.js';
import * as example from './fleet-examples.js';

type Schema = Record<string, unknown>;

const text: Schema = { type: 'string' };
const maybe = (schema: Schema): Schema => ({ ...schema, type: [schema['type'], 'null'] });
const listOf = (items: Schema): Schema => ({ type: 'array', items });
const texts = listOf(text);
const ref = (name: string): Schema => ({ $ref: `#/components/schemas/${name}` });

const id: Schema = { type: 'string', format: 'uuid' };
const version: Schema = { type: 'integer', minimum: 1, description: 'Also sent as ETag.' };
const degrees: Schema = { type: 'number', description: 'WGS 84; south and west negative.' };

/** An object of exactly these members; a name that ends in `?` may be left out. */
function members(properties: Record<string, Schema>, ...examples: object[]): Schema {
  const names = Object.keys(properties);
  return {
    type: 'object',
    additionalProperties: false,
    required: names.filter((name) => !name.endsWith('?')),
    properties: Object.fromEntries(names.map((name) => [name.replace('?', ''), properties[name]])),
    ...(examples.length > 0 ? { examples } : {}),
  };
}

const by = {
  person: text,
  accountId: maybe(id),
  role: maybe(text),
  device: maybe(text),
  deviceId: maybe(id),
  recordedAt: { type: 'string', format: 'date-time' },
};
const reading = members({ explanation: texts, remarks: texts });
const position = {
  'latitude?': degrees,
  'longitude?': degrees,
  'positionReading?': members({
    notation: text,
    precisionM: { type: 'number' },
    remarks: listOf(members({ code: text, detail: text })),
  }),
};

/** The schema of what is shown: what was sent, an id and a version, and what follows from it. */
function shown(shape: Shape, beside: Record<string, Schema>, sample: object): Schema {
  const sent = schemaOf(shape) as { required?: string[]; properties: Record<string, Schema> };
  const more = members({ id, version, ...beside }) as {
    required: string[];
    properties: Record<string, Schema>;
  };
  return {
    type: 'object',
    additionalProperties: false,
    required: [...more.required, ...(sent.required ?? [])],
    properties: { ...sent.properties, ...more.properties },
    examples: [sample],
  };
}

const page = (name: string): Schema =>
  members({
    items: listOf(ref(name)),
    next: { type: ['string', 'null'], description: 'The `after` of the next page.' },
  });

const withExamples = (shape: Shape, ...examples: object[]): Schema => ({ ...schemaOf(shape), examples });
const oneStep: Schema = { oneOf: Object.values(STEP_SHAPES).map(schemaOf), examples: example.STEPS_SENT };

const craft = {
  'hullNumberReading?': reading,
  'registrationNumberReading?': reading,
  'inService?': {
    type: 'boolean',
    description: 'In lists; the service of one craft has an address of its own.',
  },
};
const refusal = members({ code: text, detail: text });
const hold = members({
  incident: maybe(id),
  reason: text,
  gravity: { type: ['string', 'null'], enum: [...GRAVITIES, null] },
  consequence: { type: 'object' },
  photographs: texts,
  clearances: listOf({ type: 'object' }),
  needs: members({
    by: { type: 'string', enum: STANDINGS },
    photographs: { type: 'boolean' },
    clearance: { type: 'boolean' },
    because: text,
  }),
  against: { ...listOf(refusal), description: 'Why whoever asks may not release it now; empty: they may.' },
});

/** Bodies and answers of the fleet by the names that its routes give them. */
export const FLEET_SCHEMAS: Readonly<Record<string, Schema>> = {
  FleetCraftDetails: withExamples(FleetCraftDto, example.CRAFT_SENT),
  FleetCraft: shown(FleetCraftDto, craft, example.CRAFT_SHOWN),
  FleetCraftPage: page('FleetCraft'),
  StationDetails: withExamples(StationDto, example.STATION_SENT),
  Station: shown(StationDto, position, example.STATION_SHOWN),
  StationPage: page('Station'),
  FleetPlaceDetails: withExamples(FleetPlaceDto, example.PLACE_SENT),
  FleetPlace: shown(FleetPlaceDto, position, example.PLACE_SHOWN),
  FleetPlacePage: page('FleetPlace'),
  CallChoices: members({
    craft: listOf(
      members({ id, unitName: text, type: text, colours: texts, registrationNumber: maybe(text) }),
    ),
    places: listOf(
      members({
        id,
        name: text,
        alsoCalled: texts,
        latitude: maybe(degrees),
        longitude: maybe(degrees),
        directions: maybe(text),
      }),
    ),
    stations: listOf(
      members({
        id,
        name: text,
        timeZone: text,
        address: maybe(text),
        latitude: maybe(degrees),
        longitude: maybe(degrees),
        numbers: listOf({ type: 'object' }),
      }),
    ),
  }),
  PolicyDetails: withExamples(PolicyDto, example.POLICY_SENT),
  Policy: shown(PolicyDto, {}, example.POLICY_SHOWN),
  PolicyPage: page('Policy'),
  KeptVersion: members(
    { version, details: { type: 'object' }, ...by },
    { version: 1, details: example.CRAFT_SENT, ...example.BY },
  ),
  KeptVersionPage: page('KeptVersion'),
  CraftNoteDetails: withExamples(CraftNoteDto, example.NOTE_SENT),
  CraftNote: members(
    {
      id,
      craft: id,
      about: text,
      text,
      day: maybe({ type: 'string', format: 'date' }),
      hourMeter: maybe({ type: 'number' }),
      ...by,
    },
    { id: example.OTHER_ID, craft: example.CRAFT_ID, ...example.NOTE_SENT, ...example.BY },
  ),
  CraftNotePage: page('CraftNote'),
  ServiceStepDetails: oneStep,
  ServiceStep: members({
    id,
    craft: id,
    sequence: { type: 'integer' },
    at: { type: 'string', format: 'date-time' },
    step: { type: 'object' },
    ...by,
  }),
  ServiceStepPage: page('ServiceStep'),
  CraftService: members({
    craft: id,
    inService: { type: 'boolean' },
    holds: listOf(hold),
    released: listOf(members({ incident: id, gravity: { type: 'string', enum: GRAVITIES } })),
    heldByAgency: { type: ['object', 'null'] },
    custodyGaps: texts,
    doNotStart: texts,
  }),
  CraftMatches: members({
    items: listOf(members({ craft: { type: 'object' }, named: { type: 'boolean' }, because: texts })),
  }),
  ReleaseAmountDetails: withExamples(ReleaseAmountDto, { amountCents: 50_000 }),
  ReleaseAmount: members({ id, version, amountCents: { type: 'integer' }, ...by }),
  ReleaseAmountPage: page('ReleaseAmount'),
};
