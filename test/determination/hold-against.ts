import type { Duty } from '../../shared/determination/determination.js';
import type { Completion } from './complete-facts.js';

/** A duty as it is once every unknown is answered in some way. */
export interface CompletedDuty {
  readonly completion: Completion;
  readonly duty: Duty;
}

export const instant = (dateTime: string | null): number =>
  dateTime === null ? Infinity : Date.parse(dateTime);

/** The earliest clock that is, or may be, on it. */
export const firstDue = ({ dueAt, dueAtIfRequired }: Duty): number =>
  Math.min(instant(dueAt), instant(dueAtIfRequired));

export const asks = ({ questions }: Duty, pointer: string | null): boolean =>
  questions.some(({ fact }) => fact === pointer);

/** A question that no fact answers. */
export const asksLaw = (duty: Duty): boolean => asks(duty, null);

/**
 * Two questions stand outside the comparison: the signs of harm are asked beside the outcome, which answers
 * them; and whatever happened was a casualty of some type, so that question has but one side.
 */
export function comparable(fact: string | null): boolean {
  return fact !== null && !fact.endsWith('/signsOfHarm') && fact !== '/casualtyTypes';
}

/** Two completions that differ in this answer only, in outcome or (for what is or may be due) in an earlier deadline. */
export function decides(fact: string, duty: Duty, later: readonly CompletedDuty[]): boolean {
  return groupsBut(fact, later).some((group) => {
    if (duty.outcome === 'undetermined') return new Set(group.map((one) => one.duty.outcome)).size > 1;
    const dues = group.map((one) => instant(one.duty.dueAt));
    return dues.some((due) => due < instant(duty.dueAt)) && new Set(dues).size > 1;
  });
}

/** The completions in groups that differ in this answer only, and in what only one side of it asks. */
function groupsBut(fact: string, later: readonly CompletedDuty[]): CompletedDuty[][] {
  const hangsOn = fact.replace(/\/inpatient$/, '/admittedAt');
  const byOthers = new Map<string, CompletedDuty[]>();
  for (const one of later) {
    const others = JSON.stringify(
      [...one.completion.answers].filter(([key]) => key !== fact && key !== hangsOn).sort(),
    );
    byOthers.set(others, [...(byOthers.get(others) ?? []), one]);
  }
  return [...byOthers.values()];
}

/** The reach is open while a trigger is true: which later clock the open facts could beat, completions cannot tell. */
export const awaitsReach = ({ outcome, reasons }: Duty): boolean =>
  outcome === 'undetermined' &&
  reasons.some(({ trigger, value }) => value === 'true' && !trigger.startsWith('applies/'));
