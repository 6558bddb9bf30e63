import { casualtyTypes } from '../../vocabulary/casualty-types.js';
import { beyondFirstAidTreatments, firstAidTreatments } from '../../vocabulary/treatments.js';
import { vesselTypes } from '../../vocabulary/vessel-types.js';
import type { SectionName } from '../incident-record.js';
import { call } from './en/call.js';
import { craft, damage } from './en/craft.js';
import { contacts, incident, statements, timeline } from './en/log.js';
import { people } from './en/people.js';
import { account, conditions, scene, timeAndPlace } from './en/place.js';
import { checkIn, rental } from './en/rental.js';
import { authorities, emergencyResponse } from './en/response.js';
import { values } from './en/values.js';

/** The labels of the lists themselves. */
const vocabulary: Readonly<Record<string, string>> = Object.fromEntries(
  [...casualtyTypes, ...vesselTypes, ...firstAidTreatments, ...beyondFirstAidTreatments].map(
    ({ slug, label }) => [slug, label],
  ),
);

/** A section in words: the path of a field, of a part or of a list (items as a star), and what it is called. */
export interface SectionWords {
  title: string;
  lead: string;
  fields: Readonly<Record<string, string>>;
  help: Readonly<Record<string, string>>;
}

export const sections: Readonly<Record<SectionName | 'incident', SectionWords>> = {
  call,
  'time-and-place': timeAndPlace,
  account,
  conditions,
  scene,
  'emergency-response': emergencyResponse,
  craft,
  people,
  damage,
  rental,
  authorities,
  statements,
  contacts,
  timeline,
  'check-in': checkIn,
  incident,
};

export const units = {
  dollars: 'US dollars',
  hours: 'hours',
  days: 'days',
  years: 'years',
  people: 'people',
  times: 'times',
  pieces: 'pieces',
  metres: 'metres',
  sheet: 'hundredths of half the sheet',
  degrees: 'degrees true',
};

export type UnitName = keyof typeof units;

export const words = {
  vocabulary,
  sections,
  values,
  units,
  /** What an item is told from the others of its list by. */
  id: 'Mark in the list',
  /** Parts of values that are more than a word. */
  parts: {
    by: 'Who saw or told it, or what it was read off',
    learnedAt: 'Learned',
    give: (minutes: number) => `give or take ${minutes} min`,
    between: (from: string, until: string) => `between ${from} and ${until}`,
    within: (metres: number) => `within ${metres} m`,
    range: (low: string, high: string) => `${low} to ${high}`,
  },
};

export type FieldWords = typeof words;
