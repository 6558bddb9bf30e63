import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Determination, Duty } from '../../shared/determination/determination.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { readIncidentFacts } from '../../shared/wire/read-incident-facts.js';
import { readLawCases } from './law-cases.js';
import { determineFacts } from './situation.js';

/**
 * What is forgotten must never excuse anybody. From a document that says yes or no to everything, some answers are
 * taken back: what was required may then be open, never ruled out, and never seem due later. (The other way round a law
 * may be taken to apply until somebody says otherwise.) Nothing here looks at the questions or at a rule, so it holds
 * every pack, those of other matters among them.
 */
type Path = readonly (string | number)[];

const ROOT = join(import.meta.dirname, '..', '..');
const RESCUE = JSON.parse(
  readFileSync(join(ROOT, 'fixtures', 'facts', 'good', 'attendant-hurt-in-a-rescue.json'), 'utf8'),
) as IncidentFacts;

/** Where a document says yes or no. */
function answersIn(value: unknown, path: Path = []): Path[] {
  if (value === 'yes' || value === 'no') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, member]) =>
    answersIn(member, [...path, Array.isArray(value) ? Number(name) : name]),
  );
}

function answered(facts: IncidentFacts, path: Path, word: 'yes' | 'no' | 'unknown'): IncidentFacts {
  const copy = structuredClone(facts);
  const holder = path.slice(0, -1).reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], copy);
  (holder as Record<string, unknown>)[path.at(-1) ?? ''] = word;
  return copy;
}

function opposite(facts: IncidentFacts, path: Path): 'yes' | 'no' {
  const now = path.reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], facts);
  return now === 'yes' ? 'no' : 'yes';
}

const isReadable = (facts: IncidentFacts): boolean => readIncidentFacts(structuredClone(facts)).ok;

/** Documents of our own cases about other matters, as they are and with some answers turned round. */
const OF_OTHER_MATTERS = /-/;
const DOCUMENTS: readonly IncidentFacts[] = [
  RESCUE,
  ...readLawCases()
    .filter(({ pack }) => OF_OTHER_MATTERS.test(pack))
    .map(({ facts }) => facts),
];

const documents = fc
  .constantFrom(...DOCUMENTS)
  .chain((facts) => {
    const places = answersIn(facts);
    return fc
      .tuple(fc.subarray(places, { maxLength: 3 }), fc.subarray(places, { minLength: 1, maxLength: 4 }))
      .map(([turned, forgotten]) => {
        const full = turned.reduce((one, path) => answered(one, path, opposite(one, path)), facts);
        return { full, less: forgotten.reduce((one, path) => answered(one, path, 'unknown'), full) };
      });
  })
  .filter(({ full, less }) => isReadable(full) && isReadable(less));

const named = ({ duties }: Determination): Map<string, Duty> =>
  new Map(duties.map((duty) => [duty.id, duty]));

describe('facts that are taken back', () => {
  it('never rule out what was required, and never move a duty out of sight', () => {
    fc.assert(
      fc.property(documents, ({ full, less }) => {
        const after = named(determineFacts(less));
        for (const [id, duty] of named(determineFacts(full))) {
          const now = after.get(id);
          expect([id, now === undefined]).toEqual([id, false]);
          if (duty.outcome === 'required') expect([id, now?.outcome]).not.toEqual([id, 'not-required']);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('never make what is required seem due later', () => {
    fc.assert(
      fc.property(documents, ({ full, less }) => {
        const after = named(determineFacts(less));
        for (const [id, { outcome, dueAt }] of named(determineFacts(full))) {
          if (outcome !== 'required' || dueAt === null) continue;
          const now = after.get(id);
          const clocks = [now?.dueAt, now?.dueAtIfRequired].flatMap((at) => (at ? [Date.parse(at)] : []));
          // Without any clock the product says to ask now.
          if (clocks.length === 0) continue;
          expect([id, Math.min(...clocks) <= Date.parse(dueAt)]).toEqual([id, true]);
        }
      }),
      { numRuns: 300 },
    );
  });
});
