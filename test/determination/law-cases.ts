import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildLawCases, type CaseFile, type LawCase } from '../../shared/law/law-case.js';

const FORMS = join(import.meta.dirname, '..', '..', 'forms');
const FOLDERS = [join(FORMS, 'law', 'cases'), join(FORMS, 'duties', 'cases')];

/** Every case of `forms/law/cases` and `forms/duties/cases`: each amount at, below and above, each clock, each trigger alone. */
export function readLawCases(): LawCase[] {
  const base = readFileSync(join(FORMS, 'law', 'cases', 'base.json'), 'utf8');
  const files = FOLDERS.flatMap((folder) =>
    readdirSync(folder)
      .filter((file) => /^[a-z]{2}(-[a-z]+)*\.json$/.test(file))
      .map((file) => join(folder, file)),
  );
  return files.flatMap((file) => buildLawCases(JSON.parse(readFileSync(file, 'utf8')) as CaseFile, base));
}
