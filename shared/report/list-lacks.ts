import { SECTION_NAMES, type SectionName } from '../record/incident-record.js';
import type { FilledReport, ItemState } from './filled-report.js';

/** What reports still lack in one section of the record, for whoever writes there. */
export interface SectionLacks {
  readonly section: SectionName;
  readonly lacks: readonly Lack[];
}

export interface Lack {
  /** Of the item: `25`. */
  readonly item: string;
  readonly citation: string;
  readonly label: string;
  readonly subject: string | null;
  /** Missing, or known not to be known. */
  readonly state: Exclude<ItemState, 'answered'>;
  readonly text: string;
  /** Field of the section; empty for the section as a whole. */
  readonly path: string;
  /** Ids of the reports that lack it. */
  readonly reports: readonly string[];
}

/**
 * What the official reports of an incident still lack, by the section of the record where it is written, in the order of
 * the report.
 * @example listLacks([report])[0] // { section: 'craft', lacks: [{ item: '25', path: '/craft/c1/hullNumber', … }] }
 */
export function listLacks(reports: readonly FilledReport[]): SectionLacks[] {
  const sections = new Map<SectionName, Map<string, Lack>>(
    SECTION_NAMES.map((section) => [section, new Map()]),
  );
  for (const { id, items, stateItems } of reports) {
    for (const item of [...items, ...stateItems]) {
      for (const line of item.lines) {
        const lacks = line.section === null ? undefined : sections.get(line.section);
        if (line.state === 'answered' || lacks === undefined) continue;
        const { label, subject, state, text, path } = line;
        const key = JSON.stringify([item.id, path, subject, label]);
        const named = [...(lacks.get(key)?.reports ?? []), id];
        lacks.set(key, {
          item: item.id,
          citation: item.citation,
          label,
          subject,
          state,
          text,
          path,
          reports: named,
        });
      }
    }
  }
  return [...sections].flatMap(([section, lacks]) =>
    lacks.size === 0 ? [] : [{ section, lacks: [...lacks.values()] }],
  );
}
