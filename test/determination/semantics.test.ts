import { Ajv2020 } from 'ajv/dist/2020.js';
import { fullFormats } from 'ajv-formats/dist/formats.js';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import determinationSchema from '../../forms/determination/determination.schema.json' with { type: 'json' };
import packSchema from '../../forms/law/rule-pack.schema.json' with { type: 'json' };
import type { Determination, Duty } from '../../shared/determination/determination.js';
import { determine } from '../../shared/determination/determine.js';
import { checkRulePack } from '../../shared/law/check-rule-pack.js';
import type { RulePack } from '../../shared/law/rule-pack.js';
import { readIncidentFacts } from '../../shared/wire/read-incident-facts.js';
import { mergePatch } from '../../shared/kernel/merge-patch.js';
import { readAllSemanticCases, type ExpectedDuty, type SemanticCase } from './semantic-cases.js';
import { geography, packs } from './situation.js';

/**
 * Each rule of the determination contract at work. The expectations were worked out by hand from the rule, the
 * law and its pack, not by running this code. Deadlines over a change of clocks are those of the tz database.
 */
const ajv = new Ajv2020({
  strict: true,
  strictTypes: false,
  strictRequired: false,
  formats: { 'date-time': fullFormats['date-time'], date: fullFormats.date },
});
const isDetermination = ajv.compile(determinationSchema);
const isPack = ajv.compile(packSchema);

const byFile = new Map<string, SemanticCase[]>();
for (const one of readAllSemanticCases()) byFile.set(one.file, [...(byFile.get(one.file) ?? []), one]);

describe.each([...byFile])('%s', (_, cases) => {
  it.each(cases.map((one) => [`${one.name}. ${one.sentence}`, one] as const))('%s', (_name, one) => {
    const read = readIncidentFacts(structuredClone(one.facts));
    if (one.expect.refused !== undefined) {
      expect(read.ok ? [] : read.errors.map(({ pointer }) => pointer)).toEqual(one.expect.refused);
      return;
    }
    if (!read.ok) throw new Error(`The facts are refused: ${JSON.stringify(read.errors)}`);
    const found = determine(read.facts, { packs: patchedPacks(one), geography, source: 'test' });
    expectSound(found);
    expectAsSaid(found, one);
  });
});

it('names every case once, and there are enough', () => {
  const names = readAllSemanticCases().map(({ file, name }) => `${file}: ${name}`);
  expect(new Set(names).size).toBe(names.length);
  expect(names.length).toBeGreaterThan(150);
});

/** The packs with the case's invented rules in them, which must be sound packs themselves. */
function patchedPacks(one: SemanticCase): RulePack[] {
  const unknown = Object.keys(one.packs).filter((code) => !packs.some((pack) => pack.jurisdiction === code));
  expect(unknown).toEqual([]);
  return packs.map((pack) => {
    const patch = one.packs[pack.jurisdiction];
    if (patch === undefined) return pack;
    const patched = mergePatch(pack, patch) as RulePack;
    expect(isPack(patched), JSON.stringify(isPack.errors)).toBe(true);
    expect(checkRulePack(patched, `${pack.jurisdiction.toLowerCase()}.json`)).toEqual([]);
    return patched;
  });
}

/** What every determination owes, whatever the facts. */
function expectSound(found: Determination): void {
  expect(isDetermination(found), JSON.stringify(isDetermination.errors)).toBe(true);
  for (const duty of found.duties) {
    const pointers = duty.questions.flatMap(({ fact }) => (fact === null ? [] : [fact]));
    expect(new Set(pointers).size, `${duty.id} asks twice`).toBe(pointers.length);
    for (const due of [duty.dueAt, duty.dueAtIfRequired]) {
      if (due !== null) expect(due.slice(-6), duty.id).toBe(offsetAt(due, found.timeZone));
    }
    if (duty.outcome === 'not-required') {
      expect(duty, duty.id).toMatchObject({
        dueAt: null,
        dueAtIfRequired: null,
        immediate: false,
        dueBasis: null,
        questions: [],
      });
    } else if (duty.outcome === 'undetermined') {
      expect(duty.dueAt, duty.id).toBeNull();
      expect(duty.questions, duty.id).not.toEqual([]);
    } else {
      expect(duty.dueBasis, duty.id).toMatch(/\w/);
      const { dueAt, dueAtIfRequired } = duty;
      expect(dueAt, duty.id).not.toBeNull();
      if (dueAt !== null && dueAtIfRequired !== null) {
        expect(Date.parse(dueAtIfRequired), duty.id).toBeLessThan(Date.parse(dueAt));
      }
    }
  }
}

function expectAsSaid(found: Determination, { expect: said }: SemanticCase): void {
  if (said.timeZone !== undefined) expect(found.timeZone).toBe(said.timeZone);
  if (said.ids !== undefined) expect(found.duties.map(({ id }) => id)).toEqual(said.ids);
  if (said.states !== undefined) {
    const marked = said.states.map(({ chosenBy }) => chosenBy !== undefined);
    expect(
      found.states.map(({ state, chosenBy }, i) => (marked[i] === true ? { state, chosenBy } : { state })),
    ).toEqual(said.states);
  }
  const duties = said.duties ?? [];
  expect(Object.fromEntries(duties.map((duty) => [duty.id, lookAt(found, duty)]))).toEqual(
    Object.fromEntries(duties.map((duty) => [duty.id, asLooked(duty)])),
  );
}

/** What the expectation names of the duty that was found, with instants as instants. */
function lookAt(found: Determination, said: ExpectedDuty): object {
  const duty = found.duties.find(({ id }) => id === said.id);
  if (duty === undefined) return { absent: true };
  if (said.absent === true) return { absent: false };
  const looked: Record<keyof Omit<ExpectedDuty, 'absent'>, unknown> = {
    id: duty.id,
    jurisdiction: duty.jurisdiction,
    kind: duty.kind,
    outcome: duty.outcome,
    dueAt: instant(duty.dueAt),
    dueAtIfRequired: instant(duty.dueAtIfRequired),
    immediate: duty.immediate,
    dueBasis: duty.dueBasis,
    questions: duty.questions.map(({ fact }) => fact),
    reporters: duty.reporters.map(({ vessel, who }) => ({ vessel, who })),
    citations: said.citations?.filter((citation) => duty.citations.includes(citation)),
    says: said.says?.filter((words) => textOf(duty).includes(words.toLowerCase())),
  };
  return Object.fromEntries(Object.entries(looked).filter(([key]) => key in said));
}

function textOf({ reasons, questions, reporters }: Duty): string {
  return [...reasons, ...questions, ...reporters].map(({ text }) => text.toLowerCase()).join('\n');
}

function asLooked(said: ExpectedDuty): object {
  if (said.absent === true) return { absent: true };
  const instants: Pick<ExpectedDuty, 'dueAt' | 'dueAtIfRequired'> = {};
  if (said.dueAt !== undefined) instants.dueAt = instant(said.dueAt);
  if (said.dueAtIfRequired !== undefined) instants.dueAtIfRequired = instant(said.dueAtIfRequired);
  return { ...said, ...instants };
}

function instant(dateTime: Duty['dueAt']): string | null {
  return dateTime === null ? null : Temporal.Instant.from(dateTime).toString();
}

/** The offset in force in the zone at that instant. */
function offsetAt(dateTime: string, zone: string): string {
  return Temporal.Instant.from(dateTime).toZonedDateTimeISO(zone).offset;
}
