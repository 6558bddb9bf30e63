import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  SCENE_LINES,
  SCENE_MOVEMENTS,
  SCENE_THINGS,
  type SceneSection,
} from '../../shared/record/scene-section.js';
import { compassPoint } from '../../shared/scene/compass-point.js';
import { drawScene, roundLength } from '../../shared/scene/draw-scene.js';
import { readScene, type ReadScene } from '../../shared/scene/read-scene.js';
import { SHEET } from '../../shared/scene/scene-shape.js';
import { sceneKindName, tellScene } from '../../shared/scene/tell-scene.js';
import { readSection } from '../../shared/wire/record-reading.js';

const NAMES: Readonly<Record<string, string>> = { c1: 'PWC 3', c2: 'PWC 4' };
const read = (section: SceneSection): ReadScene =>
  readScene(
    section,
    (id) => NAMES[id],
    (kind) => sceneKindName(kind, 'en'),
  );

const TWO_CRAFT: SceneSection = {
  metresAcross: { value: 200, known: 'told', by: 'the dock hand' },
  windFrom: { value: 225, known: 'saw' },
  currentToward: { value: 90, known: 'told' },
  marks: [
    { id: 'm1', kind: 'our-craft', craft: 'c1', across: 0, up: 30, heading: 180, movement: 'under-way' },
    { id: 'm2', kind: 'our-craft', craft: 'c2', across: -30, up: 0, movement: 'drifting' },
    { id: 'm3', kind: 'buoy', label: 'No-wake buoy' },
  ],
  lines: [{ id: 'l1', kind: 'dock', points: [[-100, -80], [0, -80]] }], // prettier-ignore
};

describe('a sketch in words', () => {
  it('tells sheet, wind, current, each thing from the middle, and what has no place', () => {
    expect(tellScene(read(TWO_CRAFT), 'en')).toEqual([
      'The top of the sheet is N (0°).',
      'The sheet is 200 m (656 ft) wide.',
      'Wind from SW (225°).',
      'Current toward E (90°).',
      'PWC 3 (our craft): 30 m N of the middle, heading S (180°), under way.',
      'PWC 4 (our craft): 30 m W of the middle, heading not known, drifting.',
      'No-wake buoy (buoy): place not known.',
      'Dock: from 128 m SW of the middle to 80 m S of the middle.',
    ]);
  });

  it('turns with the sheet, and gives no metres to what is not to scale', () => {
    expect(tellScene(read({ marks: TWO_CRAFT.marks ?? [], topBearing: 90 }), 'en')).toEqual(
      expect.arrayContaining([
        'The top of the sheet is E (90°).',
        'Not to scale.',
        'PWC 3 (our craft): 3/10 of the way to the edge, E of the middle, heading S (180°), under way.',
      ]),
    );
  });

  it('says that nothing is drawn', () => {
    expect(tellScene(read({}), 'en')).toEqual(['Nothing is drawn yet.']);
  });

  it('reads in Spanish, where west is oeste', () => {
    const spanish = tellScene(read(TWO_CRAFT), 'es');
    expect(spanish).toContain('Viento desde SO (225°).');
    expect(spanish.join(' ')).not.toMatch(/\b(heading|middle|sheet|not known)\b/);
  });
});

describe('a drawn sketch', () => {
  const words = (section: SceneSection): string[] =>
    drawScene(read(section), 'en').flatMap((shape) => (shape.shape === 'words' ? [shape.words] : []));

  it('names what stands on it, and shows a scale bar of a round length', () => {
    expect(words(TWO_CRAFT)).toEqual([
      'N',
      'Wind from SW (225°)',
      'Current toward E (90°)',
      '50 m (164 ft)',
      'Dock',
      'PWC 3, under way',
      'PWC 4, drifting',
    ]);
  });

  it('points the bow of a craft where it heads, and gives none to a heading that is not known', () => {
    const hulls = drawScene(read(TWO_CRAFT), 'en').filter(
      (shape) => shape.shape === 'area' && shape.points.length >= 4,
    );
    // PWC 3 is at 100, 70 and heads south: its bow lies below it.
    expect(hulls[0]).toMatchObject({ points: expect.arrayContaining([[100, 78]]) as unknown });
    expect(hulls[1]).toMatchObject({ points: [[70, 95], [75, 100], [70, 105], [65, 100]] }); // prettier-ignore
  });

  it('puts a name off the signs: below one that has a craft at its right', () => {
    const marks: SceneSection['marks'] = [
      { id: 'm1', kind: 'person', label: 'Rider', across: 0, up: 0 },
      { id: 'm2', kind: 'our-craft', label: 'PWC 3', across: 14, up: 0, heading: 0 },
      { id: 'm3', kind: 'our-craft', label: 'PWC 4', across: -14, up: 0, heading: 0 },
    ];
    const rider = drawScene(read({ marks }), 'en').find(
      (shape) => shape.shape === 'words' && shape.words === 'Rider',
    );
    expect(rider).toMatchObject({ at: [100, 111], align: 'middle' });
  });

  it('says that it is not to scale where no width is known', () => {
    expect(words({ marks: [] })).toEqual(['N', 'Not to scale']);
  });

  it.each([
    [37, 20],
    [50, 50],
    [9.9, 5],
    [1, 1],
    [1999, 1000],
  ])('chooses for at most %d a bar of %d', (most, length) => {
    expect(roundLength(most)).toBe(length);
  });
});

describe('any sketch that the service takes', () => {
  const bearing = fc.integer({ min: 0, max: 360 });
  const onSheet = fc.integer({ min: -100, max: 100 });
  const known = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<{ value: T; known: 'told' }> =>
    fc.record({ value, known: fc.constant('told' as const) });
  const mark = {
    kind: fc.constantFrom(...SCENE_THINGS),
    craft: fc.constantFrom('c1', 'c9'),
    label: fc.string({ maxLength: 12, unit: 'grapheme-ascii' }),
    across: onSheet,
    up: onSheet,
    heading: bearing,
    movement: fc.constantFrom(...SCENE_MOVEMENTS),
  };
  const line = {
    kind: fc.constantFrom(...SCENE_LINES),
    label: fc.string({ maxLength: 12, unit: 'grapheme-ascii' }),
    points: fc.array(fc.tuple(onSheet, onSheet), { minLength: 2, maxLength: 6 }),
  };
  const numbered = <T>(items: T[]): (T & { id: string })[] =>
    items.map((item, index) => ({ ...item, id: `i${index}` }));
  const scene = fc.record(
    {
      metresAcross: known(fc.integer({ min: 5, max: 20_000 })),
      topBearing: bearing,
      windFrom: known(bearing),
      currentToward: known(bearing),
      marks: fc.array(fc.record(mark, { requiredKeys: [] }), { maxLength: 6 }).map(numbered),
      lines: fc.array(fc.record(line, { requiredKeys: [] }), { maxLength: 4 }).map(numbered),
    },
    { requiredKeys: [] },
  );

  it('is told thing by thing and drawn with figures alone', () => {
    fc.assert(
      fc.property(scene, (section) => {
        const taken = readSection('scene', section);
        expect(taken).toEqual({ ok: true, value: section });
        const ready = read(section);
        const told = tellScene(ready, 'en');
        for (const { name } of [...ready.marks, ...ready.lines])
          expect(told.some((sentence) => sentence.startsWith(name))).toBe(true);
        const points = drawScene(ready, 'en').flatMap((shape) =>
          'points' in shape ? shape.points : [shape.at],
        );
        for (const figure of points.flat()) {
          expect(Number.isFinite(figure)).toBe(true);
          expect(Math.abs(figure)).toBeLessThanOrEqual(SHEET * 1.3);
        }
      }),
    );
  });

  it('names a direction within half of a sixteenth of the circle', () => {
    fc.assert(
      fc.property(fc.double({ min: -720, max: 720, noNaN: true }), (degrees) => {
        const off = Math.abs(((degrees - compassPoint(degrees) * 22.5 + 180 + 1440) % 360) - 180);
        expect(off).toBeLessThanOrEqual(11.25 + 1e-9);
      }),
    );
  });

  it.each([
    [{ marks: [{ id: 'm1', across: 101 }] }, '/marks/0/across'],
    [{ lines: [{ id: 'l1', points: [[0, 0]] }] }, '/lines/0/points'],
    [{ lines: [{ id: 'l1', points: [[0, 0], [0, 'x']] }] }, '/lines/0/points'], // prettier-ignore
    [{ metresAcross: { value: 0, known: 'told' } }, '/metresAcross/value'],
  ])('that is at fault is refused with the place of the fault: %j', (section, pointer) => {
    const taken = readSection('scene', section);
    expect(taken.ok ? [] : taken.errors.map((fault) => fault.pointer)).toEqual([pointer]);
  });
});
