import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { SECTION_NAMES } from '../../shared/record/incident-record.js';
import type { ReportPart } from '../../shared/report/report-form.js';
import { SECTION_SHAPES } from '../../shared/wire/record-sections.js';
import { membersOf, type Shape } from '../../shared/wire/record-members.js';
import { FORM, readJson } from './report-matters.js';

/**
 * 33 CFR 173.57(b): what each paragraph is about, in a word or two of ours. Paragraphs 24 to 26 are from memory, and so
 * is the present wording of 23.
 */
const PARAGRAPHS: readonly (readonly [number, RegExp, string])[] = [
  [1, /number and name of each vessel/i, 'read'],
  [2, /name and address of each owner/i, 'read'],
  [3, /city or town, county, state.*body of water/i, 'read'],
  [4, /time and date/i, 'read'],
  [5, /where on the water/i, 'read'],
  [6, /visibility, weather.*water/i, 'read'],
  [7, /air and water temperature/i, 'read'],
  [8, /operator of the reporting vessel.*age or date of birth.*experience.*training/i, 'read'],
  [9, /name and address of the operator of each vessel/i, 'read'],
  [10, /number of people aboard.*towed/i, 'read'],
  [11, /name, address and date of birth.*injured or killed/i, 'read'],
  [12, /cause of each death/i, 'read'],
  [13, /forecasts.*weather reports.*before and during/i, 'read'],
  [14, /each owner of property/i, 'read'],
  [15, /flotation devices: availability and use/i, 'read'],
  [16, /type and number of each fire extinguisher used/i, 'read'],
  [17, /nature and extent of each injury/i, 'read'],
  [18, /damage.*all other property.*cost of repair/i, 'read'],
  [19, /failure of equipment/i, 'read'],
  [20, /account of what happened/i, 'read'],
  [21, /cruising, drifting, fishing, hunting, skiing, racing.*capsizing, sinking, fire, explosion/i, 'read'],
  [22, /opinion of the cause.*alcohol or drugs/i, 'read'],
  [23, /make, model, type, length, horsepower, propulsion, fuel, construction, model year/i, 'read-old-text'],
  [24, /name, address and telephone of each witness/i, 'memory'],
  [25, /hull identification number/i, 'memory'],
  [26, /name, address and telephone of the person who submits/i, 'memory'],
];

/** Members of a manager's opinion, which stands beside the record. */
const OF_OPINION = ['text', 'alcoholOrDrugs'];

describe('the official report as data', () => {
  it.each(['official-report', 'state-items', 'form-bands'])('keeps to its schema: %s', (name) => {
    const validate = new Ajv2020({ strict: false }).compile(readJson(`${name}.schema.json`) as object);
    expect(validate(readJson(`${name}.json`)), JSON.stringify(validate.errors)).toBe(true);
  });

  it('has the 26 items of 33 CFR 173.57(b), in order', () => {
    expect(FORM.items.map(({ number }) => number)).toEqual(PARAGRAPHS.map(([number]) => number));
  });

  it.each(PARAGRAPHS)('asks what 33 CFR 173.57(b)(%i) asks', (number, words, basis) => {
    const item = FORM.items.find((one) => one.number === number);
    expect(item?.citation).toBe(`33 CFR 173.57(b)(${number})`);
    expect(item?.words).toMatch(words);
    expect(item?.basis).toBe(basis);
  });

  it('says that what is known from memory alone is doubtful', () => {
    expect(FORM.doubts.join(' ')).toMatch(/24 to 26.*memory/);
  });

  it.each(everyPart().map((part) => [`${part.of}: ${part.label}`, part] as const))(
    'asks the record for fields that it has: %s',
    (_, part) => {
      const shapes = shapesOf(part);
      const known = part.of === 'opinion' ? OF_OPINION : [];
      const unknown = part.fields.filter(
        (field) => !known.includes(field) && !shapes.some((shape) => hasField(shape, field)),
      );
      expect(unknown).toEqual([]);
    },
  );
});

function everyPart(): ReportPart[] {
  return [...FORM.items, ...FORM.states.flatMap(({ items }) => items)].flatMap(({ parts }) => [...parts]);
}

/** Where the fields of a part may stand. */
function shapesOf({ of, section }: ReportPart): Shape[] {
  if (of === 'record') return section === undefined ? [] : [SECTION_SHAPES[section]];
  return SECTION_NAMES.flatMap((name) =>
    [...membersOf(SECTION_SHAPES[name]).values()].flatMap((member) =>
      member.kind === 'items' ? [member.shape()] : [],
    ),
  );
}

function hasField(shape: Shape, field: string): boolean {
  const [first = '', ...rest] = field.split('/');
  const member = membersOf(shape).get(first);
  if (member === undefined) return false;
  if (rest.length === 0) return true;
  return member.kind === 'part' && hasField(member.shape(), rest.join('/'));
}
