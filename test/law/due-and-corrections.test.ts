import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { determine } from '../../shared/determination/determine.js';
import { listDuePacks } from '../../shared/law/list-due-packs.js';
import { RulePackError, readRulePacks, withCorrections } from '../../src/server/law/law.api.js';
import { Law } from '../../src/server/determination/determination.api.js';
import { dutyOf, geography, quietGrounding } from '../determination/situation.js';

const packs = await readRulePacks();

describe('law that is due to be read again', () => {
  // Common practice, no source: twelve months unless the business says otherwise.
  it.each([
    ['the day before', '2027-11-24', []],
    ['on the day', '2027-11-25', ['TX']],
  ])('%s twelve months have passed', (_, today, due) => {
    const texas = packs.filter(({ jurisdiction }) => jurisdiction === 'TX');
    expect(listDuePacks(texas, today, 12).map(({ pack }) => pack)).toEqual(due);
  });

  it('begins with law that was never read, and counts every pack in the end', () => {
    expect(listDuePacks(packs, '2026-11-26', 12).map(({ pack }) => pack)).toEqual(['GU', 'VI', 'WV']);
    expect(listDuePacks(packs, '2030-01-01', 12)).toHaveLength(packs.length);
  });
});

const AMOUNT = packs
  .find(({ jurisdiction }) => jurisdiction === 'TX')
  ?.report?.triggers.findIndex(({ test }) => test === 'damage-total');
const CORRECTION = {
  pack: 'TX',
  on: '2026-12-01',
  by: 'Ana Ruiz',
  citation: 'Tex. Parks & Wild. Code 31.105(a)',
  note: 'The amount read on this day.',
  changes: [{ pointer: `/report/triggers/${AMOUNT}/readings/0/amountUsd`, from: 2000, to: 5000 }],
};

function folderOf(...corrections: unknown[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'law-corrections-'));
  corrections.forEach((one, i) => writeFileSync(join(folder, `${i}.json`), JSON.stringify(one)));
  return folder;
}

describe('a correction of the business', () => {
  const facts = {
    ...quietGrounding(),
    damage: [{ id: 'd1', of: 'vessel' as const, vessel: 'A', amount: 3000 }],
  };
  const texas = (law: typeof packs) =>
    dutyOf(determine(facts, { packs: law, geography, source: 'test' }), 'us-tx/accident-report');

  it('decides from then on, and the determination says which, by whom and from where', async () => {
    expect(texas(packs).outcome).toBe('required');
    const corrected = await withCorrections(packs, folderOf(CORRECTION));
    expect(texas(corrected).outcome).not.toBe('required');
    expect(texas(corrected).reasons).toContainEqual({
      trigger: 'law/correction',
      value: 'true',
      text: 'Corrected here on 2026-12-01 by Ana Ruiz: The amount read on this day.',
      citation: CORRECTION.citation,
    });
    expect(
      dutyOf(determine(facts, { packs: corrected, geography, source: 't' }), 'us/accident-report').outcome,
    ).toBe('required');
  });

  it('leaves the shipped pack as it is and makes every determination that rests on it stale', async () => {
    const before = JSON.stringify(packs);
    const corrected = await withCorrections(packs, folderOf(CORRECTION));
    expect(JSON.stringify(packs)).toBe(before);
    const [was, is] = [new Law(packs, geography), new Law(corrected, geography)];
    expect(is.digest).not.toBe(was.digest);
    const used = was.versionsFor(determine(facts, { packs, geography, source: 'test' }));
    expect(is.isCurrent(used)).toBe(false);
    expect(was.isCurrent(used)).toBe(true);
  });

  it.each<[string, unknown, RegExp]>([
    [
      'the pack says something else by now',
      { ...CORRECTION, changes: [{ ...CORRECTION.changes[0], from: 500 }] },
      /says 2000 there/,
    ],
    [
      'it names no place of the pack',
      { ...CORRECTION, changes: [{ pointer: '/report/amount', from: 1, to: 2 }] },
      /has no \/report\/amount/,
    ],
    ['no pack is called so', { ...CORRECTION, pack: 'ZZ' }, /no pack is called ZZ/],
    ['nobody signed it', { ...CORRECTION, by: ' ' }, /\/by/],
    ['nothing is cited', { ...CORRECTION, citation: undefined }, /\/citation/],
    [
      'the pack would not be sound',
      { ...CORRECTION, changes: [{ pointer: '/basis', from: 'read-primary', to: 'hearsay' }] },
      /\/basis/,
    ],
    ['it is no JSON object', 'a remark', /0\.json/],
  ])('stops the start where %s', async (_, correction, why) => {
    const correcting = withCorrections(packs, folderOf(correction));
    await expect(correcting).rejects.toThrow(RulePackError);
    await expect(withCorrections(packs, folderOf(correction))).rejects.toThrow(why);
  });
});
