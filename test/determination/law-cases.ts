import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Duty } from '../../shared/determination/determination.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { mergePatch } from './merge-patch.js';

/** One case beside the packs, its facts put together. */
export interface LawCase {
  readonly jurisdiction: string;
  readonly name: string;
  readonly duty: string;
  readonly facts: IncidentFacts;
  readonly expect: Partial<Pick<Duty, 'outcome' | 'dueAt' | 'dueAtIfRequired' | 'immediate'>>;
}

const FOLDER = join(import.meta.dirname, '..', '..', 'forms', 'law', 'cases');

interface CaseFile {
  jurisdiction: string;
  cases: { name: string; duty: string; facts: object; expect: LawCase['expect'] }[];
}

/** Every case of `forms/law/cases`: each amount at, below and above, each clock, each trigger alone. */
export function readLawCases(): LawCase[] {
  const read = (file: string): unknown => JSON.parse(readFileSync(join(FOLDER, file), 'utf8'));
  const base = JSON.stringify(read('base.json'));
  const files = readdirSync(FOLDER).filter((file) => /^[a-z]{2}\.json$/.test(file));
  return files.flatMap((file) => {
    const { jurisdiction, cases } = read(file) as CaseFile;
    // The federal rule is tried in a state of the scenario; the others where they apply.
    const at = jurisdiction === 'US' ? 'TX' : jurisdiction;
    const here: unknown = JSON.parse(base.replaceAll('"XX"', `"${at}"`));
    return cases.map((one) => ({
      jurisdiction,
      name: one.name,
      duty: one.duty,
      facts: mergePatch(here, one.facts) as IncidentFacts,
      expect: one.expect,
    }));
  });
}
