import { STATE_NAMES } from '../../../shared/place/state-codes.js';
import { STATION_NUMBERS } from '../../../shared/wire/fleet-station.dto.js';
import type { FieldSpec, SpecOption } from '../lists/field-spec.js';
import { keptPages as kept } from '../words/en/kept-pages.js';
import { places } from '../words/en/places.js';

const { stations, spots, policies } = places;
const { none, hidden } = kept;

const STATES: readonly SpecOption[] = Object.entries(STATE_NAMES).map(([value, label]) => ({ value, label }));

/** The fields of a station, in the order of StationDto. */
export const stationSpecs: readonly FieldSpec[] = [
  { name: 'name', label: stations.name, as: 'line', required: true },
  { name: 'timeZone', label: stations.timeZone, hint: stations.timeZoneHint, as: 'line', required: true },
  { name: 'state', label: stations.state, as: 'one', options: STATES, none },
  { name: 'address', label: stations.address, hint: stations.addressHint, as: 'line' },
  { name: 'position', label: stations.position, hint: stations.positionHint, as: 'line' },
  {
    name: 'numbers',
    label: stations.numbers,
    hint: stations.numbersHint,
    as: 'items',
    one: stations.number,
    fields: [
      {
        name: 'of',
        label: stations.of,
        as: 'one',
        options: STATION_NUMBERS.map((value) => ({ value, label: stations.ofs[value] })),
        none,
        required: true,
      },
      { name: 'name', label: stations.who, as: 'line', required: true },
      { name: 'phone', label: stations.phone, as: 'phone' },
      { name: 'channel', label: stations.channel, hint: stations.channelHint, as: 'line' },
      { name: 'note', label: stations.note, as: 'line' },
    ],
  },
  { name: 'retiredOn', label: stations.ended, hint: hidden, as: 'day' },
];

/** The fields of a named place, in the order of FleetPlaceDto. */
export function spotSpecs(all: readonly SpecOption[]): readonly FieldSpec[] {
  return [
    { name: 'name', label: spots.name, as: 'line', required: true },
    { name: 'alsoCalled', label: spots.alsoCalled, as: 'words' },
    { name: 'position', label: spots.position, hint: stations.positionHint, as: 'line' },
    { name: 'waterBody', label: spots.waterBody, as: 'line' },
    { name: 'nearestTown', label: spots.nearestTown, as: 'line' },
    { name: 'county', label: spots.county, as: 'line' },
    { name: 'state', label: spots.state, as: 'one', options: STATES, none },
    { name: 'directions', label: spots.directions, as: 'text' },
    { name: 'stationId', label: spots.station, as: 'one', options: all, none },
    { name: 'retiredOn', label: spots.ended, hint: hidden, as: 'day' },
  ];
}

/** The fields of a policy, in the order of PolicyDto. */
export function policySpecs(craft: readonly SpecOption[]): readonly FieldSpec[] {
  return [
    { name: 'number', label: policies.number, as: 'line', required: true },
    { name: 'insurer', label: policies.insurer, as: 'line', required: true },
    { name: 'covers', label: policies.covers, hint: policies.coversHint, as: 'line' },
    { name: 'firstDay', label: policies.firstDay, as: 'day', required: true },
    { name: 'lastDay', label: policies.lastDay, as: 'day', required: true },
    {
      name: 'scheduledCraft',
      label: policies.scheduledCraft,
      as: 'several',
      options: craft,
      none: policies.noCraft,
    },
    { name: 'noticePhone', label: policies.noticePhone, as: 'phone' },
    { name: 'noticeMail', label: policies.noticeMail, as: 'mail' },
    { name: 'noticeTerms', label: policies.noticeTerms, hint: policies.noticeTermsHint, as: 'text', rows: 4 },
    { name: 'deductibleCents', label: policies.deductibleCents, as: 'dollars' },
    { name: 'retiredOn', label: policies.ended, hint: hidden, as: 'day' },
  ];
}
