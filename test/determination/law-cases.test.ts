import { describe, expect, it } from 'vitest';
import { packCode } from '../../shared/law/pack-code.js';
import type { LawCase } from '../../shared/law/law-case.js';
import { readLawCases } from './law-cases.js';
import { determineFacts, dutyOf, packs } from './situation.js';

/**
 * The cases beside the packs: their expectations were worked out from the words of each law as its pack
 * records them (the citations stand in the pack), not by running this code.
 */
const byPack = new Map<string, LawCase[]>();
for (const one of readLawCases()) {
  byPack.set(one.pack, [...(byPack.get(one.pack) ?? []), one]);
}

describe.each([...byPack])('law of %s', (_, cases) => {
  it.each(cases.map((one) => [`${one.duty}: ${one.name}`, one] as const))('%s', (_name, one) => {
    const duty = dutyOf(determineFacts(one.facts), one.duty);
    const { dueAt, dueAtIfRequired, questions, ...plain } = one.expect;
    expect(duty).toMatchObject(plain);
    if (dueAt !== undefined) expect(instant(duty.dueAt)).toBe(instant(dueAt));
    if (dueAtIfRequired !== undefined) expect(instant(duty.dueAtIfRequired)).toBe(instant(dueAtIfRequired));
    if (questions !== undefined) expect(duty.questions.map(({ fact }) => fact)).toEqual(questions);
  });
});

it('every pack has cases', () => {
  const missing = packs.map(packCode).filter((code) => !byPack.has(code));
  expect(missing).toEqual([]);
});

function instant(dateTime: string | null): string | null {
  return dateTime === null ? null : new Date(dateTime).toISOString();
}
