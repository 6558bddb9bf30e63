import { describe, expect, it } from 'vitest';
import { kindQuestions, typesAbout } from '../../shared/record/kind-questions.js';
import { SECTION_NAMES } from '../../shared/record/incident-record.js';
import { listRecordFields } from '../../shared/wire/list-record-fields.js';
import { vesselTypes } from '../../shared/vocabulary/vessel-types.js';

const told = <T>(value: T) => ({ value, known: 'told' as const });
const craft = [
  { id: 'c1', type: told('personal-watercraft') },
  { id: 'c2', type: told('paddlecraft') },
  { id: 'c3' },
];

describe('what is asked first', () => {
  it.each([
    ['people', ['personal-watercraft'], '/people/*/seat'],
    ['craft', ['personal-watercraft'], '/craft/*/powerSetting'],
    ['craft', ['personal-watercraft'], '/craft/*/throttleInTurn'],
    ['craft', ['pontoon-boat'], '/craft/*/gatesClosed'],
    ['craft', ['pontoon-boat'], '/craft/*/bowRiding'],
    ['conditions', ['paddlecraft'], '/waterTemperature'],
    ['people', ['paddlecraft'], '/people/*/clothing'],
  ] as const)('in %s of %s has %s', (section, types, field) => {
    expect(kindQuestions(section, types)).toContain(field);
  });

  it('is nothing of its own for other types, and each once for several', () => {
    expect(kindQuestions('craft', ['airboat', 'a big one'])).toEqual([]);
    const both = kindQuestions('people', ['personal-watercraft', 'pontoon-boat']);
    expect(both).toEqual([...new Set(both)]);
  });

  it('are fields that there are', () => {
    const types = vesselTypes.map(({ slug }) => slug);
    const asked = SECTION_NAMES.flatMap((section) =>
      kindQuestions(section, types).map((path) => `${section}:${path}`),
    );
    expect(asked.length).toBeGreaterThan(12);
    expect(asked.filter((field) => !listRecordFields().includes(field))).toEqual([]);
  });

  it.each([
    ['a person on a craft', { craft: 'c2' }, ['paddlecraft']],
    ['a craft', { id: 'c1' }, ['personal-watercraft']],
    ['a person on no craft that is listed', { craft: 'c9' }, ['personal-watercraft', 'paddlecraft']],
    ['a section', {}, ['personal-watercraft', 'paddlecraft']],
  ])('of %s goes by its type', (_what, item, types) => {
    expect(typesAbout({ craft }, item)).toEqual(types);
  });
});
