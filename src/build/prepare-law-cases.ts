import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildLawCases, type CaseFile } from '../../shared/law/law-case.js';

/**
 * Writes the cases beside each pack, with whole facts, to `dist/web/data/cases/<code in small letters>.json` under the
 * project's root: the page of a law tries them in the browser.
 */
export function prepareLawCases(root: string): void {
  const forms = join(root, 'forms');
  const base = readFileSync(join(forms, 'law', 'cases', 'base.json'), 'utf8');
  const folder = join(root, 'dist', 'web', 'data', 'cases');
  mkdirSync(folder, { recursive: true });
  for (const cases of [join(forms, 'law', 'cases'), join(forms, 'duties', 'cases')]) {
    for (const file of readdirSync(cases).filter((name) => /^[a-z]{2}(-[a-z]+)*\.json$/.test(name))) {
      const read = JSON.parse(readFileSync(join(cases, file), 'utf8')) as CaseFile;
      writeFileSync(join(folder, file), JSON.stringify(buildLawCases(read, base)));
    }
  }
}
