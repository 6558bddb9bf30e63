import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Known } from '../../shared/call/known.js';
import type { IncidentRecord } from '../../shared/record/incident-record.js';
import type { FilledItem, FilledReport, ReportLine } from '../../shared/report/filled-report.js';
import { listReports } from '../../shared/report/list-reports.js';
import type { FormBands, ReportForm, StateItems } from '../../shared/report/report-form.js';
import type { ReportMatter } from '../../shared/report/report-matter.js';

const FOLDER = join(import.meta.dirname, '..', '..', 'forms', 'report');

export function readJson(name: string): unknown {
  return JSON.parse(readFileSync(join(FOLDER, name), 'utf8'));
}

/** The data of `forms/report`, read here without the service's own reader. */
export const FORM: ReportForm = {
  ...(readJson('official-report.json') as Omit<ReportForm, 'states' | 'bands'>),
  states: (readJson('state-items.json') as { states: StateItems[] }).states,
  bands: (readJson('form-bands.json') as { forms: FormBands[] }).forms,
};

export const saw = <T>(value: T): Known<T> => ({ value, known: 'saw' });
export const told = <T>(value: T, by: string): Known<T> => ({ value, known: 'told', by });
const readOff = <T>(value: T, by: string): Known<T> => ({ value, known: 'read-off', by });

const INCIDENT: IncidentRecord['incident'] = {
  reference: '2026-0042',
  openedAt: '2026-06-13T16:25:00Z',
  status: 'open',
  timeZone: 'America/Chicago',
};

export const EMPTY: IncidentRecord = { incident: INCIDENT, sections: {} };

/** Two of our craft collide on Lake Texoma: one rider with a Polish name is hurt, one craft is scratched. */
export const RICH: IncidentRecord = {
  incident: INCIDENT,
  sections: {
    'time-and-place': {
      occurred: told({ at: '2026-06-13T11:20:00-05:00', precision: 'about', withinMinutes: 5 }, 'Ann Lee'),
      position: readOff({ latitude: 33.8572, longitude: -96.5583, accuracyM: 8 }, 'the phone'),
      states: saw(['TX']),
      nearestTown: saw('Denison'),
      county: saw('Grayson'),
      waterBody: saw('Lake Texoma'),
    },
    conditions: {
      visibility: saw('good'),
      weather: saw('clear'),
      waves: told({ amount: 18, unit: 'in' }, 'Ann Lee'),
      wind: readOff({ amount: 20, unit: 'mph' }, 'the gauge at the dock'),
      airTemperature: readOff({ amount: 31, unit: '°C' }, 'the dock thermometer'),
      forecastAvailable: saw('NOAA forecast on the board'),
      forecastUsed: told('unknown', 'Zofia'),
    },
    craft: {
      craft: [
        {
          id: 'c1',
          ours: true,
          name: 'PWC 7',
          type: saw('personal-watercraft'),
          use: saw('rental'),
          registrationNumber: saw('TX 1234 AB'),
          stateOfNumber: saw('TX'),
          hullNumber: readOff('ABC12345D404', 'the hull'),
          aboard: saw(1),
          beingTowed: saw(0),
          makeAndModel: saw('Harbor Runner 3'),
          length: saw({ amount: 10.5, unit: 'ft' }),
          ownerName: 'Texoma Watercraft Rental',
          ownerContact: '1 Dock Road, Denison TX 75020, 903-555-0100',
          operation: told('cruising', 'Zofia'),
          fireExtinguishersUsed: saw('None used; one aboard'),
        },
        {
          id: 'c2',
          ours: true,
          name: 'PWC 9',
          type: saw('personal-watercraft'),
          use: saw('staff-operated'),
          numbered: saw('no'),
          aboard: saw(1),
          beingTowed: saw(0),
          ownerName: 'Texoma Watercraft Rental',
          ownerContact: '1 Dock Road, Denison TX 75020, 903-555-0100',
        },
      ],
    },
    people: {
      assessment: saw('complete'),
      people: [
        {
          id: 'p1',
          name: 'Zofia Łódźka',
          role: saw('operator'),
          craft: 'c1',
          address: '12 Oak Street, Sherman TX 75090',
          phone: '903-555-0107',
          birthDate: readOff('1994-02-03', 'the agreement'),
          experience: told('two rentals before', 'Zofia'),
          training: told('dock briefing', 'Zofia'),
          lifeJacket: saw('worn'),
          outcome: saw('injured'),
          care: told('beyond-first-aid', 'the ambulance crew'),
          injuries: [
            { id: 'i1', nature: saw('cut'), bodyPart: saw('left hand'), extent: saw('six stitches') },
          ],
        },
        {
          id: 'p2',
          name: 'Ben Ortiz',
          role: saw('operator'),
          craft: 'c2',
          employee: saw('yes'),
          lifeJacket: saw('unknown'),
          outcome: saw('unhurt'),
        },
        { id: 'p3', name: 'Ann Lee', role: saw('ashore'), phone: '903-555-0111', outcome: saw('unhurt') },
      ],
    },
    damage: {
      assessment: saw('complete'),
      lines: [
        {
          id: 'd1',
          of: saw('vessel'),
          craft: 'c1',
          what: 'Cracked bow',
          amount: told({ low: 900, high: 1500 }, 'the yard'),
        },
        { id: 'd2', of: saw('vessel'), craft: 'c2', what: 'Scratch', material: saw(150), labour: saw(200) },
        {
          id: 'd3',
          of: saw('vessel'),
          craft: 'c2',
          what: 'Old dent',
          newSinceCheckOut: saw('no'),
          amount: saw(400),
        },
      ],
    },
    account: {
      casualtyTypes: saw(['collision-with-recreational-vessel', 'person-ejected']),
      whatHappened: told('Both turned toward the same gap in the buoys.', 'Ann Lee'),
      equipmentFailures: saw('None found'),
    },
  },
};

/** What the fleet knows of PWC 7: all but what its hull is made of. */
export const FLEET = {
  c1: {
    make: 'Harbor',
    model: 'Runner',
    horsepower: 110,
    propulsion: 'water-jet',
    fuel: 'gas',
    modelYear: 2023,
  },
};

/** Report `c1.owner` of a record, unless another is named. */
export function matterOf(
  record: IncidentRecord,
  id?: string,
  more: Partial<ReportMatter> = {},
): ReportMatter {
  const reports = listReports(record);
  const head = reports.find((one) => one.id === id) ?? reports[0];
  if (head === undefined) throw new Error('A record always has a report.');
  return { head, record, notes: {}, fleet: {}, timeZone: 'America/Chicago', ...more };
}

export function itemOf({ items, stateItems }: FilledReport, id: string): FilledItem {
  const found = [...items, ...stateItems].find((item) => item.id === id);
  if (found === undefined) throw new Error(`There is no item ${id}.`);
  return found;
}

export function textsOf({ lines }: FilledItem): string[] {
  return lines.map(({ label, subject, text }: ReportLine) =>
    [label, subject, text].filter(Boolean).join(' | '),
  );
}
