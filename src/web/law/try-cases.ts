import type { Duty } from '../../../shared/determination/determination.js';
import type { ExpectedDuty, LawCase } from '../../../shared/law/law-case.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';

/** A case and what this browser answers; null where the duty is not called up at all. */
export interface TriedCase {
  readonly law: LawCase;
  readonly duty: Duty | null;
  readonly asExpected: boolean;
}

/**
 * Tries the cases of a pack under the law in force, in this browser.
 * @throws TypeError where there is no signal and the cases or the state lines are not kept on this device
 */
export async function tryCases(code: string, packs: readonly RulePack[]): Promise<TriedCase[]> {
  const response = await fetch(`/data/cases/${code.toLowerCase()}.json`);
  if (!response.ok) throw new Error(`Cases of ${code}: ${response.status}`);
  const [cases, { determineHere }] = await Promise.all([
    response.json() as Promise<LawCase[]>,
    import('../determination/determine-here.js'),
  ]);
  return Promise.all(
    cases.map(async (law) => {
      const came = await determineHere(law.facts, packs);
      const duties = 'determination' in came ? came.determination.duties : [];
      const duty = duties.find(({ id }) => id === law.duty) ?? null;
      return { law, duty, asExpected: duty !== null && isAsExpected(duty, law.expect) };
    }),
  );
}

function isAsExpected(
  duty: Duty,
  { outcome, immediate, dueAt, dueAtIfRequired, questions }: ExpectedDuty,
): boolean {
  return (
    (outcome === undefined || outcome === duty.outcome) &&
    (immediate === undefined || immediate === duty.immediate) &&
    isInstant(dueAt, duty.dueAt) &&
    isInstant(dueAtIfRequired, duty.dueAtIfRequired) &&
    (questions === undefined ||
      JSON.stringify(questions) === JSON.stringify(duty.questions.map(({ fact }) => fact)))
  );
}

function isInstant(expected: string | null | undefined, found: string | null): boolean {
  if (expected === undefined) return true;
  return expected === null || found === null
    ? expected === found
    : Date.parse(expected) === Date.parse(found);
}
