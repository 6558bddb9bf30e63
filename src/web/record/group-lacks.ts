import type { Lack } from '../../../shared/report/list-lacks.js';

/** One answer that is lacking, with every item of the report that waits for it. */
export interface GroupedLack extends Pick<Lack, 'path' | 'label' | 'subject' | 'state'> {
  readonly citations: readonly string[];
}

/**
 * One line for one answer: three items may ask for the operator's name, and it is written once.
 * @example groupLacks(lacks)[0]?.citations // ['33 CFR 173.57(b)(8)', '33 CFR 173.57(b)(9)']
 */
export function groupLacks(lacks: readonly Lack[]): GroupedLack[] {
  const groups = new Map<string, GroupedLack>();
  for (const { path, label, subject, state, citation } of lacks) {
    const key = JSON.stringify([path, label, subject]);
    const citations = [...new Set([...(groups.get(key)?.citations ?? []), citation])];
    groups.set(key, { path, label, subject, state, citations });
  }
  return [...groups.values()];
}
