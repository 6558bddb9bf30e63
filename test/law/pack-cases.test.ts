import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020, type SchemaObject } from 'ajv/dist/2020.js';
import ajvFormats from 'ajv-formats';
import { describe, expect, it } from 'vitest';
import { packCode } from '../../shared/law/pack-code.js';
import type { DutyRule, RulePack } from '../../shared/law/rule-pack.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { readIncidentFacts } from '../../shared/wire/read-incident-facts.js';
import { readRulePacks } from '../../src/server/law/law.api.js';
import type { LawCase } from '../../shared/law/law-case.js';
import { readLawCases } from '../determination/law-cases.js';
import { LAW_FOLDER } from './pack-folder.js';

const packs = await readRulePacks();
const folders = {
  law: join(LAW_FOLDER, 'cases'),
  duties: join(LAW_FOLDER, '..', 'duties', 'cases'),
};
const read = (file: string, folder = folders.law): unknown =>
  JSON.parse(readFileSync(join(folder, file), 'utf8'));
const fileOf = (pack: RulePack): string => `${packCode(pack).toLowerCase()}.json`;
const ajv = new Ajv2020({ allErrors: true });
ajvFormats.default(ajv);
const fits = ajv.compile(read('cases.schema.json') as SchemaObject);
const allCases = readLawCases();

describe('cases beside the packs', () => {
  it('exist for every pack and for nothing else', () => {
    const filesOf = (isOther: boolean): string[] =>
      packs.filter(({ subject }) => (subject !== undefined) === isOther).map(fileOf);
    const beside = ['base.json', 'cases.schema.json'];
    expect(readdirSync(folders.law).sort()).toEqual([...filesOf(false), ...beside].sort());
    expect(readdirSync(folders.duties).sort()).toEqual(filesOf(true).sort());
  });

  it.each(packs)('of $jurisdiction $subject are sound, and cover duties, amounts and harms', (pack) => {
    const document = read(fileOf(pack), pack.subject === undefined ? folders.law : folders.duties);
    expect(fits(document), JSON.stringify(fits.errors)).toBe(true);
    const { jurisdiction, subject } = pack;
    expect(document).toMatchObject({ jurisdiction, ...(subject !== undefined && { subject }) });
    const cases = allCases.filter((one) => one.pack === packCode(pack));
    const names = cases.map(({ duty, name }) => `${duty} ${name}`);
    expect(new Set(names).size, 'a name twice').toBe(names.length);
    for (const { name, facts } of cases) {
      expect(readIncidentFacts(facts), name).toMatchObject({ ok: true });
    }
    expect(new Set(cases.map(({ duty }) => duty))).toEqual(new Set(dutiesOf(pack).map(([id]) => id)));
    expect(gapsOf(pack, cases)).toEqual([]);
  });
});

function dutiesOf(pack: RulePack): [string, DutyRule | null][] {
  const prefix = pack.jurisdiction === 'US' ? 'us' : `us-${pack.jurisdiction.toLowerCase()}`;
  return [
    ...(pack.subject === undefined
      ? [[`${prefix}/accident-report`, pack.report] as [string, DutyRule | null]]
      : []),
    ...pack.notices.map((notice): [string, DutyRule] => [`${prefix}/${notice.id}`, notice]),
  ];
}

/** Every amount at the amount and a cent to either side, and every kind of person's harm, has a case of its own. */
function gapsOf(pack: RulePack, cases: readonly LawCase[]): string[] {
  return dutiesOf(pack).flatMap(([id, rule]) => {
    const facts = cases.filter(({ duty }) => duty === id).map((one) => one.facts);
    const totals = new Set(facts.map(totalCents));
    const harms = new Set(
      facts.flatMap(({ people }) => people.map(({ outcome, care }) => `${outcome} ${care}`)),
    );
    const amounts = (rule?.triggers ?? [])
      .filter(({ test }) => test !== 'theft-or-vandalism')
      .flatMap(({ readings }) => (readings ?? []).map(({ amountUsd }) => Math.round(amountUsd * 100)));
    return [
      ...amounts
        .flatMap((cents) => [cents - 1, cents, cents + 1])
        .filter((cents) => !totals.has(cents))
        .map((cents) => `${id}: no case with damage of ${cents} cents`),
      ...(rule && pack.subject === undefined ? EVERY_HARM : [])
        .filter((harm) => !harms.has(harm))
        .map((harm) => `${id}: no case of a person who ${harm}`),
    ];
  });
}

const EVERY_HARM = [
  'unhurt undefined',
  'died none',
  'died beyond-first-aid',
  'missing undefined',
  'injured none',
  'injured first-aid',
  'injured beyond-first-aid',
];

function totalCents({ damage }: IncidentFacts): number {
  return damage.reduce(
    (sum, { amount }) => sum + (typeof amount === 'number' ? Math.round(amount * 100) : 0),
    0,
  );
}
