import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import type { DutyRule, Limit, RulePack, Trigger } from '../../shared/law/rule-pack.js';
import { readRulePacks, RulePackError } from '../../src/server/law/law.api.js';
import { copyPacks, readPack, writePack } from './pack-folder.js';

/** A pack as a careless hand may leave it. */
type Loose = Record<string, unknown>;
const loose = (value: unknown): Loose => value as Loose;

function reportOf(pack: RulePack): DutyRule {
  if (!pack.report) throw new Error(`${pack.jurisdiction} has no report to break`);
  return pack.report;
}

/** The n-th element, which the packs of this test are known to have. */
function nth<T>(list: readonly T[] | undefined, index: number): T {
  const found = list?.[index];
  if (found === undefined) throw new Error(`nothing at ${index}`);
  return found;
}

const trigger = (pack: RulePack, index: number): Trigger => nth(reportOf(pack).triggers, index);
const limit = (pack: RulePack, index: number): Limit => nth(reportOf(pack).limits, index);

interface Planted {
  fault: string;
  file: string;
  plant: (pack: RulePack) => void;
  pointer: string;
  reason: RegExp;
}

// In tx.json the triggers are death, needs-beyond-first-aid and damage-total, under one limit; in ga.json the
// first limit is for death within 24 hours, the third narrows incapacity; in us.json the last runs from the death.
const planted: Planted[] = [
  {
    fault: 'a member that no pack has',
    file: 'tx.json',
    plant: (pack) => void (loose(pack)['agancy'] = 'misspelt'),
    pointer: '/agancy',
    reason: /may have here/,
  },
  {
    fault: 'a missing member',
    file: 'tx.json',
    plant: (pack) => void delete loose(pack)['agency'],
    pointer: '/agency',
    reason: /missing/,
  },
  {
    fault: 'a value outside its list',
    file: 'tx.json',
    plant: (pack) => void (loose(pack)['basis'] = 'hearsay'),
    pointer: '/basis',
    reason: /one of read-primary, /,
  },
  {
    fault: 'a date that does not exist',
    file: 'tx.json',
    plant: (pack) => void (pack.effectiveFrom = '2026-02-30'),
    pointer: '/effectiveFrom',
    reason: /date/,
  },
  {
    fault: 'an amount test without an amount',
    file: 'tx.json',
    plant: (pack) => void delete loose(trigger(pack, 2))['readings'],
    pointer: '/report/triggers/2/readings',
    reason: /missing/,
  },
  {
    fault: 'an amount test with no reading',
    file: 'tx.json',
    plant: (pack) => void (trigger(pack, 2).readings = []),
    pointer: '/report/triggers/2/readings',
    reason: /fewer than 1/,
  },
  {
    fault: 'a death with an amount',
    file: 'tx.json',
    plant: (pack) => void (trigger(pack, 0).readings = nth([trigger(pack, 2).readings], 0) ?? []),
    pointer: '/report/triggers/0/test',
    reason: /one of damage-total, /,
  },
  {
    fault: 'incapacity without hours',
    file: 'ms.json',
    plant: (pack) => void delete loose(trigger(pack, 1))['hours'],
    pointer: '/report/triggers/1/hours',
    reason: /missing/,
  },
  {
    fault: 'hours beside a death',
    file: 'tx.json',
    plant: (pack) => void (trigger(pack, 0).hours = 24),
    pointer: '/report/triggers/0/hours',
    reason: /does not belong/,
  },
  {
    fault: 'a time of two kinds',
    file: 'tx.json',
    plant: (pack) => void (limit(pack, 0).time = { hours: 48, immediate: true }),
    pointer: '/report/limits/0/time',
    reason: /exactly one of hours, days and immediate/,
  },
  {
    fault: 'days of no kind',
    file: 'tx.json',
    plant: (pack) => void (loose(limit(pack, 0))['time'] = { days: 30 }),
    pointer: '/report/limits/0/time/dayKind',
    reason: /needed beside days/,
  },
  {
    fault: 'a condition on a fact that is not named',
    file: 'ca.json',
    plant: (pack) => void (loose(nth(pack.notices, 0))['condition'] = { is: 'fact' }),
    pointer: '/notices/0/condition/fact',
    reason: /missing/,
  },
  {
    fault: 'a notice that takes the name of the report',
    file: 'ca.json',
    plant: (pack) => void (nth(pack.notices, 0).id = 'accident-report'),
    pointer: '/notices/0/id',
    reason: /NOT be valid/,
  },
  {
    fault: 'a trigger tied to no limit',
    file: 'tx.json',
    plant: (pack) => void limit(pack, 0).tests.pop(),
    pointer: '/report/triggers/2',
    reason: /no limit names 'damage-total'/,
  },
  {
    fault: 'a limit tied to no trigger',
    file: 'tx.json',
    plant: (pack) => void limit(pack, 0).tests.push('complete-loss'),
    pointer: '/report/limits/0/tests/3',
    reason: /no trigger tests 'complete-loss'/,
  },
  {
    fault: 'a limit of a notice tied to no trigger',
    file: 'ca.json',
    plant: (pack) => void nth(nth(pack.notices, 0).limits, 0).tests.push('any-injury'),
    pointer: '/notices/0/limits/0/tests/2',
    reason: /no trigger tests 'any-injury'/,
  },
  {
    fault: 'a later death left without a limit',
    file: 'us.json',
    plant: (pack) => void reportOf(pack).limits.pop(),
    pointer: '/report/triggers/0',
    reason: /every limit for 'death' is narrowed/,
  },
  {
    fault: 'a death bound on a limit for more than death',
    file: 'tx.json',
    plant: (pack) => void (limit(pack, 0).deathWithinHours = 24),
    pointer: '/report/limits/0/deathWithinHours',
    reason: /for death alone/,
  },
  {
    fault: 'an incapacity bound on a limit without incapacity',
    file: 'tx.json',
    plant: (pack) => void (limit(pack, 0).incapacityHours = { hours: 24, comparison: 'more-than' }),
    pointer: '/report/limits/0/incapacityHours',
    reason: /names incapacity/,
  },
  {
    fault: 'a clock from the death for what is no death',
    file: 'tx.json',
    plant: (pack) => void (limit(pack, 0).from = 'death'),
    pointer: '/report/limits/0/from',
    reason: /for death alone/,
  },
  {
    fault: 'a weaker amount before a stronger',
    file: 'ar.json',
    plant: (pack) => void trigger(pack, 3).readings?.reverse(),
    pointer: '/report/triggers/3/readings/1',
    reason: /best-based first/,
  },
  {
    fault: 'a weaker time before a stronger',
    file: 'tx.json',
    plant: (pack) => void limit(pack, 0).readings?.reverse(),
    pointer: '/report/limits/0/readings/1',
    reason: /best-based first/,
  },
  {
    fault: 'a time that is not the best-based one',
    file: 'tx.json',
    plant: (pack) => void (limit(pack, 0).time = { hours: 48 }),
    pointer: '/report/limits/0/time',
    reason: /best-based reading/,
  },
  {
    fault: 'a pack in the file of another',
    file: 'tx.json',
    plant: (pack) => void (pack.jurisdiction = 'OK'),
    pointer: '/jurisdiction',
    reason: /belongs in ok\.json/,
  },
  {
    fault: 'a code that names no jurisdiction',
    file: 'tx.json',
    plant: (pack) => void (pack.jurisdiction = 'ZZ'),
    pointer: '/jurisdiction',
    reason: /neither a USPS code nor US/,
  },
  {
    fault: 'a notice id twice',
    file: 'ga.json',
    plant: (pack) => void (nth(pack.notices, 1).id = nth(pack.notices, 0).id),
    pointer: '/notices/1/id',
    reason: /taken/,
  },
  {
    fault: 'a report in a pack that was not read',
    file: 'tx.json',
    plant: (pack) => void (pack.basis = 'not-read'),
    pointer: '/report',
    reason: /not read/,
  },
  {
    fault: 'a notice in a pack that was not read',
    file: 'sd.json',
    plant: (pack) => void (pack.basis = 'not-read'),
    pointer: '/notices',
    reason: /not read/,
  },
  {
    fault: '"no written report" beside a report',
    file: 'tx.json',
    plant: (pack) => void (pack.noWrittenReport = true),
    pointer: '/noWrittenReport',
    reason: /beside a report/,
  },
  {
    fault: 'the federal scope in a state',
    file: 'tx.json',
    plant: (pack) => void (pack.appliesTo = 'federal-scope'),
    pointer: '/appliesTo',
    reason: /federal pack/,
  },
];

async function faultsOf(folder: string): Promise<RulePackError> {
  const error: unknown = await readRulePacks(folder).then(
    () => null,
    (reason: unknown) => reason,
  );
  if (!(error instanceof RulePackError)) throw new Error('the packs were accepted');
  return error;
}

describe('a fault in a rule pack stops the start', () => {
  it.each(planted)('$fault, in $file at $pointer', async ({ file, plant, pointer, reason }) => {
    const folder = copyPacks(['us.json', file]);
    const pack = readPack(file);
    plant(pack);
    writePack(folder, file, pack);
    const { faults } = await faultsOf(folder);
    expect(faults).toContainEqual({ file, pointer, reason: expect.stringMatching(reason) as string });
    expect(new Set(faults.map((fault) => fault.file))).toEqual(new Set([file]));
  });

  it('names all faults of all files at once, in its message too', async () => {
    const folder = copyPacks(['us.json']);
    writeFileSync(join(folder, 'ny.json'), '{ "jurisdiction": ');
    writePack(folder, 'tx.json', { ...readPack('tx.json'), basis: 'hearsay', readOn: 'today' });
    const { message } = await faultsOf(folder);
    expect(message).toMatch(/ny\.json \(whole file\): is not JSON/);
    expect(message).toMatch(/tx\.json \/basis: must be one of/);
    expect(message).toMatch(/tx\.json \/readOn: /);
  });

  it('reports a misnamed file instead of passing over it', async () => {
    const folder = copyPacks(['us.json']);
    writePack(folder, 'texas.json', readPack('tx.json'));
    const { faults } = await faultsOf(folder);
    expect(faults).toMatchObject([{ file: 'texas.json', pointer: '/jurisdiction' }]);
  });

  it('reports that the federal pack is missing', async () => {
    const folder = copyPacks(['us.json']);
    rmSync(join(folder, 'us.json'));
    const { faults } = await faultsOf(folder);
    expect(faults).toMatchObject([{ file: 'us.json', pointer: '', reason: /missing/ }]);
  });
});
