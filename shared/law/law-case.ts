import { mergePatch } from '../kernel/merge-patch.js';
import type { IncidentFacts } from '../record/incident-facts.js';
import { packCode } from './pack-code.js';

/** What a case beside a pack expects of one duty; only what it names. */
export interface ExpectedDuty {
  readonly outcome?: 'required' | 'not-required' | 'undetermined';
  readonly dueAt?: string | null;
  readonly dueAtIfRequired?: string | null;
  readonly immediate?: boolean;
  /** Pointers, null for a question of law: complete and in order. */
  readonly questions?: readonly (string | null)[];
}

/** One case beside a pack, its facts put together. */
export interface LawCase {
  readonly jurisdiction: string;
  /** Code of its pack, which has a subject behind the jurisdiction where it is about another matter. */
  readonly pack: string;
  readonly name: string;
  /** Id of the duty that it is about. */
  readonly duty: string;
  readonly facts: IncidentFacts;
  readonly expect: ExpectedDuty;
}

/** The file of the cases of one pack: each case says what differs from the base (RFC 7396). */
export interface CaseFile {
  readonly jurisdiction: string;
  readonly subject?: string;
  readonly cases: readonly {
    readonly name: string;
    readonly duty: string;
    readonly facts: object;
    readonly expect: ExpectedDuty;
  }[];
}

/**
 * The cases of a file with whole facts. The base happens in `XX`: in the jurisdiction itself, and for the federal rule in
 * Texas, where the samples are.
 * @param base JSON of `forms/law/cases/base.json`
 * @example buildLawCases(texasCases, base)[0].facts.place.states // ['TX']
 */
export function buildLawCases({ jurisdiction, subject, cases }: CaseFile, base: string): LawCase[] {
  const at = jurisdiction === 'US' ? 'TX' : jurisdiction;
  const here: unknown = JSON.parse(base.replaceAll('"XX"', `"${at}"`));
  const pack = packCode({ jurisdiction, ...(subject !== undefined && { subject }) });
  return cases.map(({ name, duty, facts, expect }) => ({
    ...{ jurisdiction, pack, name, duty, expect },
    facts: mergePatch(here, facts) as IncidentFacts,
  }));
}
