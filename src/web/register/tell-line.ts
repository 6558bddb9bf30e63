import { formatPosition } from '../../../shared/place/format-position.js';
import type { SignOf } from '../look/sign.js';
import { register as say } from '../words/register.js';
import type { LineDuty, RegisterLine } from './register-answers.js';

/** What happened, in a few words: its kind, else what was said, else how it came to be known. “Other” says too little. */
export function whatOf({ summary: { casualtyTypes = [], said, kind } }: RegisterLine): string {
  const [first] = casualtyTypes;
  const words = said === undefined || said === '' ? null : `“${said}”`;
  if (first !== undefined && !(first === 'other' && words !== null)) return say.casualties[first] ?? first;
  if (words !== null) return words;
  return kind === undefined ? say.nothingSaid : ((say.kinds as Record<string, string>)[kind] ?? kind);
}

/** Where it was: in words, else its position; null where neither is known. */
export function whereOf({ summary: { where, position } }: RegisterLine): string | null {
  if (where !== undefined && where !== '') return where;
  if (position === undefined) return null;
  return formatPosition(position.latitude, position.longitude, 'degrees-minutes', 2);
}

/** Which craft, and what became of the people: `PWC 7 · Injured, Unhurt`. */
export function aboutOf({ summary: { craft = [], outcomes = [] } }: RegisterLine): string {
  const fates = outcomes.map((outcome) => (say.fates as Record<string, string>)[outcome] ?? outcome);
  return [craft.join(', '), fates.join(', ')].filter((part) => part !== '').join(' · ');
}

/** The reports about which something is still to be done: one that is not required only where a filed one is to be mended. */
export function openOf(duties: readonly LineDuty[]): readonly LineDuty[] {
  return duties.filter(
    ({ settled, outcome, supplementDue }) => !settled && (outcome !== 'not-required' || supplementDue),
  );
}

/** How the reports of an incident stand together: the gravest of those that are not settled, in one sign and its words. */
export interface Standing {
  readonly sign: SignOf;
  readonly words: string;
  readonly overdue: boolean;
}

/**
 * The gravest counts, so that one that is not required never hides one that is; and nothing determined is not known.
 * @example standingOf([]).sign // 'unknown'
 */
export function standingOf(duties: readonly LineDuty[]): Standing {
  const open = openOf(duties);
  const overdue = open.some((duty) => duty.overdue);
  const stands = (sign: SignOf, words: string): Standing => ({ sign, words, overdue });
  if (duties.length === 0) return stands('unknown', say.duty.none);
  if (open.some(({ supplementDue }) => supplementDue)) return stands('required', say.duty.supplement);
  if (open.some(({ outcome }) => outcome === 'required')) return stands('required', say.outcomes.required);
  if (open.length > 0) return stands('undetermined', say.outcomes.undetermined);
  if (duties.some(({ filed }) => filed)) return stands('required', say.duty.filed);
  if (duties.some(({ decision }) => decision === 'no-report'))
    return stands('not-required', say.duty.decided);
  return stands('not-required', say.outcomes['not-required']);
}

/** The time that runs out first among the reports that are not settled; null where none runs. */
export function clockOf(duties: readonly LineDuty[]): string | null {
  const clocks = openOf(duties).flatMap(({ dueAt }) => (dueAt === null ? [] : [dueAt]));
  return clocks.sort()[0] ?? null;
}
