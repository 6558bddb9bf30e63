import type { HowKnown } from '../../../shared/call/known.js';
import { type JsonObject, sameJson } from '../../../shared/record/json-value.js';
import type { EditConflict } from '../../../shared/record/merge-edits.js';
import type { WrittenSection } from './asked-first.js';
import type { SectionAnswer } from './record-answers.js';

/** How somebody knows what they write just now; each new fact is given it. */
export interface Source {
  readonly known: HowKnown;
  readonly by: string;
}

/** A section as one person is writing it on this device, until it has arrived. */
export interface SectionDraft {
  /** Made by `draftId`. */
  readonly id: string;
  readonly incident: string;
  readonly section: WrittenSection;
  /** Account of the writer; null on an enrolled device where nobody has signed in. */
  readonly by: string | null;
  /** What stood in the record when it was begun, or when it was last put together with another's words. */
  readonly base: JsonObject;
  readonly version: number;
  readonly finished: boolean;
  readonly document: JsonObject;
  readonly source?: Source;
  /** What of it was queued and has not arrived. */
  readonly queued?: JsonObject;
  /** Somebody else changed the section while it was written, and it was put together. */
  readonly merged?: true;
  /** Texts in which another's words were put beside ours. */
  readonly bothKept?: readonly EditConflict[];
  /** Where only one answer can stand and nobody has chosen yet. */
  readonly open?: readonly EditConflict[];
}

export const draftId = (incident: string, section: string, by: string | null): string =>
  `${incident}/${section}/${by ?? 'device'}`;

/** A draft in which nothing is written yet. */
export function beginDraft(
  incident: string,
  section: WrittenSection,
  by: string | null,
  there: Pick<SectionAnswer, 'version' | 'finished' | 'document'>,
): SectionDraft {
  const { version, finished, document } = there;
  return {
    id: draftId(incident, section, by),
    incident,
    section,
    by,
    base: document,
    version,
    finished,
    document,
  };
}

/** Whether it says anything that neither the record nor the outbox has. */
export const isUnsaved = ({ base, document, queued }: SectionDraft): boolean =>
  !sameJson(document, queued ?? base);
