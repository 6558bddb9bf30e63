import { describe, expect, it } from 'vitest';
import type { IncidentRecord } from '../../shared/record/incident-record.js';
import { fillReport } from '../../shared/report/fill-report.js';
import { EMPTY, FLEET, FORM, itemOf, matterOf, RICH, saw, textsOf, told } from './report-matters.js';

const rich = fillReport(FORM, matterOf(RICH, 'c1.owner', { fleet: FLEET }));

const ONE_CRAFT: IncidentRecord['sections'] = { craft: { craft: [{ id: 'c1', ours: true }] } };

function withSections(sections: IncidentRecord['sections']): IncidentRecord {
  return { ...RICH, sections: { ...RICH.sections, ...sections } };
}

/** The state of each item of the owner's report of PWC 7, and what its first lines say. */
const MAPPING: readonly (readonly [string, string, readonly string[]])[] = [
  [
    '1',
    'answered',
    [
      'Number | PWC 7 | TX 1234 AB',
      'Name | PWC 7 | PWC 7',
      'Number | PWC 9 | Not numbered',
      'Name | PWC 9 | PWC 9',
    ],
  ],
  ['2', 'answered', ['Owner | PWC 7 | Texoma Watercraft Rental']],
  [
    '3',
    'answered',
    ['City or town | Denison', 'County | Grayson', 'State | Texas', 'Body of water | Lake Texoma'],
  ],
  ['4', 'answered', ['Time and date | About Sat 13 June 2026 11:20 CDT, give or take 5 min']],
  ['5', 'answered', ['Location | 33° 51.432′ N, 96° 33.498′ W (WGS 84), within 8\u00a0m']],
  [
    '6',
    'answered',
    [
      'Visibility | good',
      'Weather | clear',
      'Water | 18 in (1.5 ft)',
      'Water as the form bands it | Texas PWD 047-L2000 (10/2010) | Choppy (6 in to 2 ft)',
      'Water as the form bands it | CG-3865, its bands from memory | Choppy (6 in to 2 ft)',
      'Wind | 20 mph',
      'Wind as the form bands it | Texas PWD 047-L2000 (10/2010) | Moderate (13 to 24 mph)',
      'Wind as the form bands it | CG-3865, its bands from memory | Strong (15 to 25 mph)',
    ],
  ],
  ['7', 'missing', ['Air | 31 °C (87.8 °F)', 'Water | Not recorded']],
  [
    '8',
    'answered',
    [
      'Name | PWC 7: Zofia Łódźka | Zofia Łódźka',
      'Address | PWC 7: Zofia Łódźka | 12 Oak Street, Sherman TX 75090',
    ],
  ],
  ['9', 'missing', ['Name | PWC 7: Zofia Łódźka | Zofia Łódźka']],
  ['10', 'answered', ['Aboard | PWC 7 | 1', 'Towed | PWC 7 | 0', 'Aboard | PWC 9 | 1', 'Towed | PWC 9 | 0']],
  [
    '11',
    'answered',
    [
      'Name | Zofia Łódźka | Zofia Łódźka',
      'Address | Zofia Łódźka | 12 Oak Street, Sherman TX 75090',
      'Date of birth | Zofia Łódźka | 3 February 1994',
    ],
  ],
  ['12', 'answered', ['Cause | Nobody died.']],
  ['13', 'unknown', ['Available | NOAA forecast on the board', 'Used | Not known']],
  ['14', 'answered', ['Owner, with address | No other property was damaged.']],
  ['15', 'unknown', ['Life jacket | Zofia Łódźka | Worn', 'Life jacket | Ben Ortiz | Not known']],
  ['16', 'answered', ['Fire extinguishers used | PWC 7 | None used; one aboard']],
  [
    '17',
    'answered',
    ['Injury | Zofia Łódźka | cut, left hand, six stitches', 'Care needed | Zofia Łódźka | Beyond first aid'],
  ],
  [
    '18',
    'answered',
    [
      'What | PWC 7, Damage 1 | Cracked bow; Vessel',
      'Estimated cost | PWC 7, Damage 1 | $900 to $1,500',
      'What | PWC 9, Damage 2 | Scratch; Vessel',
      'Estimated cost | PWC 9, Damage 2 | material $150; labour $200',
    ],
  ],
  ['19', 'answered', ['Equipment that failed | None found']],
  ['20', 'answered', ['What happened | Both turned toward the same gap in the buoys.']],
  [
    '21',
    'answered',
    [
      'Operation | PWC 7 | cruising',
      'Type of accident, first event first | Collision with a recreational vessel, then person ejected',
    ],
  ],
  [
    '22',
    'unknown',
    [
      'Opinion of the cause | Left blank on purpose: an opinion is a manager’s to write, after counsel, or nobody’s.',
    ],
  ],
  [
    '23',
    'missing',
    [
      'Make and model | PWC 7 | Harbor Runner 3',
      'Type | PWC 7 | Personal watercraft',
      'Length | PWC 7 | 10.5 ft',
      'Horsepower | PWC 7 | 110 hp',
      'Propulsion | PWC 7 | Water jet',
      'Fuel | PWC 7 | Gas',
      'Construction | PWC 7 | Not in the fleet’s list: link the craft to the fleet, and complete it there',
      'Model year | PWC 7 | 2023',
    ],
  ],
  [
    '24',
    'missing',
    ['Name | Ann Lee | Ann Lee', 'Address | Ann Lee | Not recorded', 'Telephone | Ann Lee | 903-555-0111'],
  ],
  ['25', 'answered', ['Hull identification number | PWC 7 | ABC12345D404']],
  ['26', 'missing', ['Name | Not recorded']],
];

describe('the official report, filled in', () => {
  it.each(MAPPING)('tells item %s of a rich record as %s', (id, state, lines) => {
    const item = itemOf(rich, id);
    expect(textsOf(item).slice(0, lines.length)).toEqual(lines);
    expect(item.state).toBe(state);
  });

  it('says how each fact is known', () => {
    const source = (id: string, label: string) =>
      itemOf(rich, id).lines.find((line) => line.label === label)?.source;
    expect(source('4', 'Time and date')).toBe('as told by Ann Lee');
    expect(source('6', 'Wind')).toBe('read off the gauge at the dock');
    expect(source('6', 'Weather')).toBe('seen by us');
    expect(source('23', 'Horsepower')).toBe('the fleet’s own list');
    expect(source('8', 'Name')).toBeNull();
  });

  it('lacks everything of an empty record but the opinion, which stays blank', () => {
    const { items, counts } = fillReport(FORM, matterOf(EMPTY));
    expect(items.filter(({ state }) => state !== 'missing').map(({ id }) => id)).toEqual(['22']);
    expect(counts).toEqual({ answered: 0, unknown: 1, missing: 25 });
  });

  it('gives the same report for the same record', () => {
    expect(fillReport(FORM, matterOf(RICH, 'c1.owner', { fleet: FLEET }))).toEqual(rich);
  });

  it('takes what somebody looked into and could not learn for known not to be known', () => {
    const notKnown = [{ id: '7', why: 'The thermometer is broken.', by: 'Mia', at: '2026-06-14T10:00:00Z' }];
    const item = itemOf(fillReport(FORM, matterOf(RICH, 'c1.owner', { notes: { notKnown } })), '7');
    expect(item.state).toBe('unknown');
    expect(textsOf(item)).toEqual(['Air | 31 °C (87.8 °F)', 'Water | Not known: The thermometer is broken.']);
  });

  it('tells the opinion that a manager wrote', () => {
    const opinion = {
      text: 'Both looked back.',
      alcoholOrDrugs: 'unknown' as const,
      by: 'Mia',
      at: '2026-06-14T10:00:00Z',
    };
    const item = itemOf(fillReport(FORM, matterOf(RICH, 'c1.owner', { notes: { opinion } })), '22');
    expect(textsOf(item)).toEqual([
      'Opinion of the cause | Both looked back.',
      'Alcohol or drugs | Not known',
    ]);
  });

  it('asks about waves at an edge of two bands, and takes the word of whoever was there', () => {
    const twoFeet = { ...RICH.sections.conditions, waves: saw({ amount: 2, unit: 'ft' as const }) };
    const asked = itemOf(fillReport(FORM, matterOf(withSections({ conditions: twoFeet }))), '6');
    expect(asked.state).toBe('missing');
    expect(textsOf(asked)[3]).toMatch(/2 ft is at an edge: Choppy .* or Rough .*\? Ask whoever was there\./);
    const said = { ...twoFeet, water: told('Rough', 'Ann Lee') };
    expect(itemOf(fillReport(FORM, matterOf(withSections({ conditions: said }))), '6').state).toBe(
      'answered',
    );
  });

  it.each<[string, IncidentRecord['sections'], string, string]>([
    [
      'a list of people that nobody closed',
      { people: { ...RICH.sections.people, assessment: saw('partial') } },
      '12',
      'missing',
    ],
    [
      'a person of whom nobody knows what became',
      {
        ...ONE_CRAFT,
        people: { assessment: saw('complete'), people: [{ id: 'p1', outcome: saw('unknown') }] },
      },
      '12',
      'unknown',
    ],
    [
      'fewer people listed than were aboard',
      { people: { assessment: saw('complete'), people: RICH.sections.people?.people?.slice(0, 1) ?? [] } },
      '15',
      'missing',
    ],
    [
      'somebody who is not accounted for',
      { people: { ...RICH.sections.people, everyoneAccountedFor: saw('no') } },
      '12',
      'missing',
    ],
    [
      'a death whose cause the examiner has not given',
      {
        ...ONE_CRAFT,
        people: {
          assessment: saw('complete'),
          people: [{ id: 'p1', outcome: saw('died'), death: { examiner: 'Grayson County' } }],
        },
      },
      '12',
      'unknown',
    ],
    [
      'a death of which nobody said who decides on the cause',
      { ...ONE_CRAFT, people: { assessment: saw('complete'), people: [{ id: 'p1', outcome: saw('died') }] } },
      '12',
      'missing',
    ],
    [
      'damage that nobody said is all',
      { damage: { ...RICH.sections.damage, assessment: saw('not-yet') } },
      '18',
      'missing',
    ],
    [
      'types of accident that somebody could not tell',
      { account: { casualtyTypes: saw(['unknown']) } },
      '21',
      'unknown',
    ],
  ])('never takes for complete what may not be: %s', (_, sections, id, state) => {
    const item = itemOf(fillReport(FORM, matterOf(withSections(sections), 'c1.owner')), id);
    expect(item.state).toBe(state);
  });

  it('leaves to a customer who drove what is theirs to write, and to our own operator nothing', () => {
    const theirs = fillReport(FORM, matterOf(RICH, 'c1.operator'));
    const ours = fillReport(FORM, matterOf(RICH, 'c2.operator'));
    expect(theirs.customerWrites).toBe(true);
    for (const id of ['11', '17', '20', '22', '24']) {
      expect(textsOf(itemOf(theirs, id))).toEqual([
        'Left to the operator, who writes it from what they know.',
      ]);
    }
    expect(ours.customerWrites).toBe(false);
    expect(textsOf(itemOf(ours, '20'))[0]).toMatch(/^What happened/);
    expect(textsOf(itemOf(ours, '26'))[0]).toBe('Name | PWC 9: Ben Ortiz | Ben Ortiz');
  });

  it('adds the items of the states concerned: where it happened, and of the number', () => {
    const where = { ...RICH.sections['time-and-place'], states: saw(['WI']) };
    const { stateItems } = fillReport(FORM, matterOf(withSections({ 'time-and-place': where })));
    expect(stateItems.map(({ id }) => id)).toEqual([
      'WI-drowned',
      'WI-activity',
      'WI-rescuers',
      'WI-gear',
      'WI-signature',
    ]);
    expect(stateItems[4]?.lines[0]?.text).toMatch(/write it on the form/);
    expect(rich.stateItems).toEqual([]);
  });
});
