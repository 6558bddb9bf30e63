import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Duty, Question } from '../../shared/determination/determination.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { mergePatch } from '../../shared/kernel/merge-patch.js';
import { nothingKnown, quietGrounding } from './situation.js';

/** What a case says of one duty; what it does not name is not looked at. */
export interface ExpectedDuty extends Partial<
  Pick<Duty, 'jurisdiction' | 'kind' | 'outcome' | 'dueAt' | 'dueAtIfRequired' | 'immediate' | 'dueBasis'>
> {
  id: string;
  /** True when the duty must not be there at all. */
  absent?: boolean;
  /** Pointers, null for a question of law: complete and in order. */
  questions?: Question['fact'][];
  /** Complete and in order. */
  reporters?: { vessel: string | null; who: string }[];
  /** At least these. */
  citations?: string[];
  /** Words that its reasons, questions or reporters must hold, upper or lower case. */
  says?: string[];
}

export interface Expectation {
  timeZone?: string;
  /** Complete and in order; `chosenBy` where the case is about it. */
  states?: { state: string; chosenBy?: string }[];
  /** The ids of all duties, in order. */
  ids?: string[];
  duties?: ExpectedDuty[];
  /** The facts are refused at these pointers, and nothing is determined. */
  refused?: string[];
}

/** One rule of the contract at work: the facts put together, and what they must give. */
export interface SemanticCase {
  /** The file that holds it, for example `05-people`. */
  readonly file: string;
  readonly name: string;
  /** The rule in words, with its law where it has one. */
  readonly sentence: string;
  readonly facts: IncidentFacts;
  /** RFC 7396 patches of rule packs by USPS code, for cases that need an invented rule. */
  readonly packs: Record<string, object>;
  readonly expect: Expectation;
}

interface CaseFile {
  about: string;
  /** For every case of the file. */
  packs?: Record<string, object>;
  cases: {
    name: string;
    sentence: string;
    base: 'quiet' | 'nothing';
    /** RFC 7396 patch over `quietGrounding()` or `nothingKnown()`. */
    facts: object;
    packs?: Record<string, object>;
    expect: Expectation;
  }[];
}

const FOLDER = join(import.meta.dirname, 'semantics');

/** Every case of the folder `semantics`, one file for each rule, those that must be refused among them. */
export function readAllSemanticCases(): SemanticCase[] {
  return readdirSync(FOLDER)
    .sort()
    .flatMap((fileName) => {
      const file = JSON.parse(readFileSync(join(FOLDER, fileName), 'utf8')) as CaseFile;
      return file.cases.map((one) => ({
        file: fileName.replace('.json', ''),
        name: one.name,
        sentence: one.sentence,
        facts: mergePatch(
          one.base === 'quiet' ? quietGrounding() : nothingKnown(),
          one.facts,
        ) as IncidentFacts,
        packs: { ...file.packs, ...one.packs },
        expect: one.expect,
      }));
    });
}

/** The facts of every case that can be determined, to be run elsewhere with the packs as they are. */
export function readSemanticCases(): { name: string; facts: IncidentFacts }[] {
  return readAllSemanticCases()
    .filter((one) => one.expect.refused === undefined)
    .map(({ file, name, facts }) => ({ name: `${file}: ${name}`, facts }));
}
