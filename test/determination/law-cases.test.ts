import { describe, expect, it } from 'vitest';
import { readLawCases, type LawCase } from './law-cases.js';
import { determineFacts, dutyOf, packs } from './situation.js';

/**
 * The cases beside the packs: their expectations were worked out from the words of each law as its pack
 * records them (the citations stand in the pack), not by running this code.
 */
const byJurisdiction = new Map<string, LawCase[]>();
for (const one of readLawCases()) {
  byJurisdiction.set(one.jurisdiction, [...(byJurisdiction.get(one.jurisdiction) ?? []), one]);
}

describe.each([...byJurisdiction])('law of %s', (_, cases) => {
  it.each(cases.map((one) => [`${one.duty}: ${one.name}`, one] as const))('%s', (_name, one) => {
    const duty = dutyOf(determineFacts(one.facts), one.duty);
    const { dueAt, dueAtIfRequired, ...plain } = one.expect;
    expect(duty).toMatchObject(plain);
    if (dueAt !== undefined) expect(instant(duty.dueAt)).toBe(instant(dueAt));
    if (dueAtIfRequired !== undefined) expect(instant(duty.dueAtIfRequired)).toBe(instant(dueAtIfRequired));
  });
});

it('every pack has cases', () => {
  const missing = packs.map(({ jurisdiction }) => jurisdiction).filter((code) => !byJurisdiction.has(code));
  expect(missing).toEqual([]);
});

function instant(dateTime: string | null): string | null {
  return dateTime === null ? null : new Date(dateTime).toISOString();
}
