import type { DutyView } from './service-answers.js';

/** Our craft that reports are owed for, each once; none while no craft is named. */
export function craftOf(duties: readonly Pick<DutyView, 'vessel'>[]): string[] {
  return [...new Set(duties.flatMap(({ vessel }) => vessel ?? []))];
}
