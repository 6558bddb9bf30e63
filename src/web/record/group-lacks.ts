import { fieldLabel } from '../../../shared/record/field-words/tell-field.js';
import type { Lack, SectionLacks } from '../../../shared/report/list-lacks.js';
import { language } from '../words/speak.js';

/** One answer that is lacking, with every item of the report that waits for it. */
export interface GroupedLack extends Pick<Lack, 'path' | 'state'> {
  /** Whom or what it is about, and the question as the record asks it; as the report says it where it is no one field. */
  readonly words: string;
  readonly citations: readonly string[];
}

/**
 * One line for one answer: three items may ask for the operator's name, and it is written once.
 * @example groupLacks({ section: 'people', lacks })[0]?.citations // ['33 CFR 173.57(b)(8)', '33 CFR 173.57(b)(9)']
 */
export function groupLacks({ section, lacks }: SectionLacks): GroupedLack[] {
  const groups = new Map<string, GroupedLack>();
  for (const { path, label, subject, state, citation } of lacks) {
    const own = path === '' ? undefined : fieldLabel(section, path, language());
    const asked = own ?? label;
    const words = subject === null ? asked : `${subject}: ${asked}`;
    const key = own === undefined ? words : path;
    const citations = [...new Set([...(groups.get(key)?.citations ?? []), citation])];
    groups.set(key, { path, words: groups.get(key)?.words ?? words, state, citations });
  }
  return [...groups.values()];
}
