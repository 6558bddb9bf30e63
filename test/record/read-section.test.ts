import { Ajv2020 } from 'ajv/dist/2020.js';
import ajvFormats from 'ajv-formats';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SECTION_NAMES, type SectionName } from '../../shared/record/incident-record.js';
import { readSection } from '../../shared/wire/record-reading.js';
import { sectionSchema } from '../../shared/wire/record-sections.js';
import { arbitraryOf } from './arbitrary-record.js';

const pointersOf = (name: SectionName, input: unknown): string[] => {
  const reading = readSection(name, input);
  return reading.ok ? [] : reading.errors.map(({ pointer }) => pointer);
};

describe.each(SECTION_NAMES)('the section %s', (name) => {
  const ajv = new Ajv2020({ allErrors: true, strict: false });
  ajvFormats.default(ajv);
  const fits = ajv.compile(sectionSchema(name));

  it('takes every document of its published schema', () => {
    fc.assert(
      fc.property(arbitraryOf(sectionSchema(name)), (document) => {
        expect(fits(document)).toBe(true);
        expect(pointersOf(name, document)).toEqual([]);
      }),
    );
  });

  it('refuses a member that it has not, as the schema does', () => {
    const document = { tideTable: 'high' };
    expect(fits(document)).toBe(false);
    expect(pointersOf(name, document)).toEqual(['/tideTable']);
  });
});

describe('a section', () => {
  it.each<[SectionName, unknown, string[]]>([
    ['people', { people: [{ id: 'p1', outcome: 'injured' }] }, ['/people/0/outcome']],
    [
      'people',
      { people: [{ id: 'p1', outcome: { value: 'hurt', known: 'saw' } }] },
      ['/people/0/outcome/value'],
    ],
    ['people', { people: [{ id: 'p1', outcome: { value: 'died' } }] }, ['/people/0/outcome/known']],
    [
      'people',
      { people: [{ id: 'p1', outcome: { value: 'died', known: 'saw', sure: true } }] },
      ['/people/0/outcome/sure'],
    ],
    ['people', { people: [{ id: 'p1' }, { id: 'p1' }, null] }, ['/people/1/id', '/people/2']],
    ['people', { people: [{ name: 'Ann' }] }, ['/people/0/id']],
    ['people', { people: [{ id: '__proto__' }] }, ['/people/0/id']],
    [
      'people',
      { people: [{ id: 'p1', birthDate: { value: '2026-02-30', known: 'told' } }] },
      ['/people/0/birthDate/value'],
    ],
    [
      'people',
      { people: [{ id: 'p1', treatments: { value: ['massage', 'magic'], known: 'told' } }] },
      ['/people/0/treatments/value/1'],
    ],
    ['damage', { lines: [{ id: 'd1', amount: { value: 1.001, known: 'told' } }] }, ['/lines/0/amount/value']],
    [
      'damage',
      { lines: [{ id: 'd1', amount: { value: { low: 2, high: 1 }, known: 'told' } }] },
      ['/lines/0/amount/value/high'],
    ],
    [
      'time-and-place',
      { position: { value: { latitude: 91 }, known: 'read-off' } },
      ['/position/value/latitude', '/position/value/longitude'],
    ],
    [
      'time-and-place',
      {
        occurred: {
          value: { at: '2026-06-13T16:00:00Z', until: '2026-06-13T15:00:00Z', precision: 'span' },
          known: 'told',
        },
      },
      ['/occurred/value/until'],
    ],
    ['time-and-place', { states: { value: ['TX', 'TX'], known: 'saw' } }, ['/states/value']],
    ['call', { taken: { at: '2026-06-13T16:00:00' } }, ['/taken/at', '/taken/how']],
    ['call', { overdue: { ended: { value: 'sunk', known: 'told' } } }, ['/overdue/ended/value']],
    ['call', { late: { toldThenAt: { value: 'at noon', known: 'told' } } }, ['/late/toldThenAt/value']],
    ['conditions', { wind: { value: { amount: 12, unit: 'ft' }, known: 'saw' } }, ['/wind/value/unit']],
    ['conditions', { wind: { value: { amount: -1, unit: 'kn' }, known: 'saw' } }, ['/wind/value/amount']],
    [
      'craft',
      { craft: [{ id: 'c1', speed: { value: { amount: 1 }, known: 'told' } }] },
      ['/craft/0/speed/value/unit'],
    ],
    [
      'emergency-response',
      {
        responders: [
          { id: 'r1', kind: 'navy', patients: ['p 1'], dispatch: { sent: { value: 'x', known: 'told' } } },
        ],
      },
      ['/responders/0/dispatch/sent/value', '/responders/0/kind', '/responders/0/patients/0'],
    ],
    [
      'authorities',
      { handedOver: [{ id: 'h1', basis: 'order', sheet: { owner: 7 } }] },
      ['/handedOver/0/basis', '/handedOver/0/sheet/owner'],
    ],
    [
      'check-in',
      { findings: [{ what: 'scratch', renterAnswer: { value: 'shrugs', known: 'saw' } }] },
      ['/findings/0/id', '/findings/0/renterAnswer/value'],
    ],
    ['rental', { briefed: ['p1', 'p1'] }, ['/briefed']],
    ['damage', { outOfService: [{ id: 'o1', from: '2026-06-31' }] }, ['/outOfService/0/from']],
    ['contacts', { contacts: [{ id: 'k1', promisedBy: 'soon' }] }, ['/contacts/0/promisedBy']],
    ['call', { said: 'bell \u0007' }, ['/said']],
    ['call', { said: 'half \ud83d' }, ['/said']],
    ['call', { said: 'x'.repeat(50_001) }, ['/said']],
    ['call', { said: null }, ['/said']],
    ['call', [], ['']],
    ['call', 'help', ['']],
  ])('%s %j is at fault at %j', (name, input, pointers) => {
    expect(pointersOf(name, input)).toEqual(pointers);
  });

  it.each<[SectionName, unknown, string]>([
    ['call', { said: 'take 4111 1111 1111 1111' }, '/said'],
    ['call', { caller: { name: '219-09-9999' } }, '/caller/name'],
    [
      'people',
      { people: [{ id: 'p1', hospital: { value: '4111-1111-1111-1111', known: 'told' } }] },
      '/people/0/hospital/value',
    ],
    [
      'people',
      { people: [{ id: 'p1', age: { value: 4111111111111111, known: 'told' } }] },
      '/people/0/age/value',
    ],
    ['rental', { '4111111111111111': 'x' }, '/(a number that is not kept)'],
    ['contacts', { contacts: [{ id: 'c1', summary: 'ssn: 219099999' }] }, '/contacts/0/summary'],
    [
      'authorities',
      { handedOver: [{ id: 'h1', sheet: { operator: 'Bo, 219-09-9999' } }] },
      '/handedOver/0/sheet/operator',
    ],
    [
      'rental',
      { identityPaper: { value: 'card 4111 1111 1111 1111', known: 'saw' } },
      '/identityPaper/value',
    ],
  ])('%s refuses a number that has no place in it, and does not repeat it', (name, input, pointer) => {
    const reading = readSection(name, input);
    expect(reading).toEqual({
      ok: false,
      errors: [{ pointer, detail: expect.stringMatching(/take it out/) as string }],
    });
    expect(JSON.stringify(reading)).not.toMatch(/4111|9999/);
  });
});
