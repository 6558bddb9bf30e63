import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Outcome } from '../../shared/determination/determination.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';

/** Cases beside the packs, as `forms/law/cases/cases.schema.json` describes them. */
export interface PackCases {
  jurisdiction: string;
  cases: PackCase[];
}

export interface PackCase {
  name: string;
  duty: string;
  /** A JSON merge patch (RFC 7396) over base.json. */
  facts: Record<string, unknown>;
  expect: { outcome: Outcome; dueAt: string | null; immediate: boolean; dueAtIfRequired?: string | null };
}

export const CASES_FOLDER = join(import.meta.dirname, '..', '..', 'forms', 'law', 'cases');

const base = readFileSync(join(CASES_FOLDER, 'base.json'), 'utf8');

export function caseFiles(): string[] {
  return readdirSync(CASES_FOLDER).filter((file) => /^[a-z]{2}\.json$/.test(file));
}

export function readPackCases(file: string): PackCases {
  return JSON.parse(readFileSync(join(CASES_FOLDER, file), 'utf8')) as PackCases;
}

/** The facts of a case: its patch over the base, in which XX stands for the jurisdiction (for the federal pack: TX). */
export function factsOf({ facts }: Pick<PackCase, 'facts'>, jurisdiction: string): IncidentFacts {
  const code = jurisdiction === 'US' ? 'TX' : jurisdiction;
  return mergePatch(JSON.parse(base.replaceAll('"XX"', `"${code}"`)), facts) as IncidentFacts;
}

/** RFC 7396, section 2. */
function mergePatch(target: unknown, patch: unknown): unknown {
  if (!isObject(patch)) return patch;
  const merged: Record<string, unknown> = isObject(target) ? { ...target } : {};
  for (const [key, value] of Object.entries(patch)) {
    if (value === null) delete merged[key];
    else merged[key] = mergePatch(merged[key], value);
  }
  return merged;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
