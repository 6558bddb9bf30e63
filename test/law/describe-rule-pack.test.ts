import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { describeRulePack } from '../../shared/law/describe-rule-pack.js';
import { packCode } from '../../shared/law/pack-code.js';
import { nameDate, nameTrigger } from '../../shared/law/name-law-terms.js';
import { wrapText } from '../../shared/law/wrap-text.js';
import { readRulePacks } from '../../src/server/law/law.api.js';

const packs = await readRulePacks();
const root = join(import.meta.dirname, '..', '..');

function pageOf(code: string): string {
  const pack = packs.find((one) => packCode(one) === code);
  if (!pack) throw new Error(`no pack for ${code}`);
  return describeRulePack(pack);
}

/** As one line, so that a check does not depend on where a line ends. */
const flat = (page: string): string => page.replace(/\s+/g, ' ');

describe('a jurisdiction in plain words', () => {
  it.each(packs)('$jurisdiction: cautions, reading, doubts and sources are all there', (pack) => {
    const page = flat(pageOf(packCode(pack)));
    expect(page).toContain('Emergency services first');
    expect(page).toContain('not legal advice');
    expect(page).toContain('confirm with the agency and with counsel');
    expect(page).toMatch(new RegExp(`Read: .*${nameDate(pack.readOn)}`));
    expect(page).toContain(flat(pack.agency));
    for (const doubt of pack.doubts) expect(page).toContain(flat(doubt));
    for (const { section, url } of pack.citations) {
      expect(page).toContain(flat(section));
      expect(page).toContain(url);
    }
    for (const rule of [...(pack.report ? [pack.report] : []), ...pack.notices]) {
      expect(page).toContain(flat(rule.to));
      for (const trigger of rule.triggers) {
        expect(page).toContain(flat(nameTrigger(trigger)));
        for (const { source } of trigger.readings ?? []) expect(page).toContain(flat(source));
      }
    }
  });

  it.each(packs)('$jurisdiction: no line is wider than 80 columns, web addresses excepted', (pack) => {
    const wide = pageOf(packCode(pack))
      .split('\n')
      .filter((line) => line.length > 80 && line.trim().includes(' '));
    expect(wide).toEqual([]);
  });

  it.each([
    { code: 'TX', words: 'Damage, all property together, of more than $2,000.' },
    { code: 'TX', words: 'Within 30 days of the occurrence: a death;' },
    { code: 'US', words: 'Damage, all property together, of $2,000 or more (33 CFR 173.55(a)(3)).' },
    {
      code: 'US',
      words: 'Within 48 hours of the occurrence: a death within 24 hours (33 CFR 173.55(b)(1)).',
    },
    { code: 'US', words: 'Within 10 days of the death: a death (33 CFR 173.55(b)(3)).' },
    { code: 'US', words: 'DEATH OR DISAPPEARANCE NOTICE' },
    { code: 'OK', words: 'of more than $2,000, or by another source $2,000 or more.' },
    { code: 'OK', words: 'No time is stated: a death;' },
    { code: 'AR', words: 'Within 10 business days of the occurrence' },
    { code: 'NY', words: "Damage to any one person's property of more than $1,000." },
    { code: 'NY', words: 'Within 5 days of learning of it' },
    { code: 'NY', words: "OWNER'S REPORT" },
    { code: 'GA', words: 'for 24 hours or more.' },
    { code: 'GA', words: 'incapacity of more than 24 hours.' },
    {
      code: 'AL',
      words: 'its present text was not read. By itself it leaves the answer open: ask the agency.',
    },
    { code: 'GA', words: "Read on the agency's own page. 5. A person cannot" },
    { code: 'AL', words: 'read in a text that has since been replaced: shown, but it does not count.' },
    {
      code: 'GU',
      words: 'The law was not read, so nothing can be said. That is not "no report": ask the agency now.',
    },
    { code: 'MN', words: 'The texts read show none. That is not "no report": ask the agency now.' },
    { code: 'CA', words: 'left out: vessels that need a federal certificate of inspection.' },
  ])('$code says "$words"', ({ code, words }) => {
    expect(flat(pageOf(code))).toContain(words);
  });
});

describe('the law command', () => {
  const law = (...codes: string[]) =>
    spawnSync(process.execPath, [join(root, 'dist', 'cli', 'law.js'), ...codes], { encoding: 'utf8' });

  it('prints the jurisdictions asked for, in that order and in either case', () => {
    const { stdout, stderr, status } = law('us', 'TX');
    expect({ stderr, status }).toEqual({ stderr: '', status: 0 });
    expect(stdout.indexOf('UNITED STATES')).toBe(0);
    expect(stdout.indexOf('TEXAS (TX)')).toBeGreaterThan(0);
  });

  it('lists all with the day they were read and the basis when none is named', () => {
    const { stdout, status } = law();
    expect(status).toBe(0);
    expect(stdout).toMatch(/^TX +Texas +2026-11-25 +2023-09-01 +in the law itself$/m);
    expect(stdout).toMatch(/^GU +Guam +2026-11-25 +2025-01-01 +not at all$/m);
    for (const { jurisdiction } of packs) expect(stdout).toMatch(new RegExp(`^${jurisdiction} `, 'm'));
  });

  it('refuses an unknown code on standard error, naming the known ones', () => {
    const { stdout, stderr, status } = law('TX', 'ZZ');
    expect({ stdout, status }).toEqual({ stdout: '', status: 2 });
    expect(stderr).toContain('ZZ');
    for (const { jurisdiction } of packs) expect(stderr).toContain(jurisdiction);
  });
});

describe('wrapText', () => {
  it.each([
    { first: '', text: '', width: 10, lines: [''] },
    { first: '- ', text: 'one two three', width: 9, lines: ['- one two', '  three'] },
    {
      first: '- ',
      text: 'https://law.example/long and more',
      width: 10,
      lines: ['- https://law.example/long', '  and more'],
    },
  ])('breaks "$text" at $width', ({ first, text, width, lines }) => {
    expect(wrapText(first, text, width)).toEqual(lines);
  });
});
