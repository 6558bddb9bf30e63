import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Duty } from '../../shared/determination/determination.js';
import { packCode } from '../../shared/law/pack-code.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { mergePatch } from './merge-patch.js';

/** One case beside the packs, its facts put together. */
export interface LawCase {
  readonly jurisdiction: string;
  /** Code of its pack, which has a subject behind the jurisdiction where it is about another matter. */
  readonly pack: string;
  readonly name: string;
  readonly duty: string;
  readonly facts: IncidentFacts;
  readonly expect: Partial<Pick<Duty, 'outcome' | 'dueAt' | 'dueAtIfRequired' | 'immediate'>> & {
    /** Pointers, null for a question of law: complete and in order. */
    readonly questions?: (string | null)[];
  };
}

const FORMS = join(import.meta.dirname, '..', '..', 'forms');
const FOLDERS = [join(FORMS, 'law', 'cases'), join(FORMS, 'duties', 'cases')];

interface CaseFile {
  jurisdiction: string;
  subject?: string;
  cases: { name: string; duty: string; facts: object; expect: LawCase['expect'] }[];
}

/** Every case of `forms/law/cases` and `forms/duties/cases`: each amount at, below and above, each clock, each trigger alone. */
export function readLawCases(): LawCase[] {
  const read = (path: string): unknown => JSON.parse(readFileSync(path, 'utf8'));
  const base = JSON.stringify(read(join(FORMS, 'law', 'cases', 'base.json')));
  const files = FOLDERS.flatMap((folder) =>
    readdirSync(folder)
      .filter((file) => /^[a-z]{2}(-[a-z]+)*\.json$/.test(file))
      .map((file) => join(folder, file)),
  );
  return files.flatMap((file) => {
    const { jurisdiction, subject, cases } = read(file) as CaseFile;
    // The federal rule is tried in a state of the scenario; the others where they apply.
    const at = jurisdiction === 'US' ? 'TX' : jurisdiction;
    const here: unknown = JSON.parse(base.replaceAll('"XX"', `"${at}"`));
    return cases.map((one) => ({
      jurisdiction,
      pack: packCode({ jurisdiction, ...(subject !== undefined && { subject }) }),
      name: one.name,
      duty: one.duty,
      facts: mergePatch(here, one.facts) as IncidentFacts,
      expect: one.expect,
    }));
  });
}
