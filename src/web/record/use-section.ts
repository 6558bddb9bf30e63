import { useEffect } from 'preact/hooks';
import { useStore } from '../app/store.js';
import type { AskError } from '../ask/ask-error.js';
import { useAsk } from '../ask/use-ask.js';
import { usePickedPerson } from '../session/picked-person.js';
import { useSession } from '../session/session.js';
import type { WrittenSection } from './asked-first.js';
import { drafts, keepDraft, withLastSource } from './draft-store.js';
import type { LacksAnswer, RecordAnswer, SectionAnswer } from './record-answers.js';
import { beginDraft, draftId, type SectionDraft } from './section-draft.js';
import { rebaseDraft } from './sync-sections.js';

export interface OpenSection {
  /** Undefined while it loads. */
  readonly draft: SectionDraft | undefined;
  /** Nothing of it is on this device and the service cannot be reached: what is written is put together later. */
  readonly blind: boolean;
  /** A device on which nobody has signed in: it adds, and reads nothing. */
  readonly addsOnly: boolean;
  readonly readOnly: boolean;
  readonly record: RecordAnswer | undefined;
  readonly lacks: LacksAnswer | undefined;
  readonly error: AskError | null;
  readonly keptAt: string | null;
  readonly again: () => void;
}

const NOTHING = { version: 0, finished: false, document: {} };

/** A section as this person is writing it: what stands in the record, or their draft of it on this device. */
export function useSection(incident: string, section: WrittenSection): OpenSection {
  const { me, device } = useSession();
  const picked = usePickedPerson();
  const addsOnly = me === null && device !== null;
  const by = me?.accountId ?? picked?.accountId ?? null;
  const path = addsOnly ? null : `/api/incidents/${incident}`;
  const asked = useAsk<SectionAnswer>(path && `${path}/sections/${section}`, { keep: true });
  const record = useAsk<RecordAnswer>(path && `${path}/record`, { keep: true });
  const lacks = useAsk<LacksAnswer>(path && `${path}/report-lacks`, { keep: true });
  const kept = useStore(drafts).find(({ id }) => id === draftId(incident, section, by));
  const there = asked.data;
  const isStale =
    kept !== undefined && there !== undefined && kept.queued === undefined && there.version > kept.version;
  useEffect(() => {
    if (isStale) keepDraft(rebaseDraft(kept, there));
  }, [isStale]);
  const blind = !addsOnly && there === undefined && asked.error?.trouble === 'unreachable';
  const begun = there ?? (addsOnly || blind ? NOTHING : undefined);
  return {
    draft: kept ?? (begun && withLastSource(beginDraft(incident, section, by, begun))),
    blind,
    addsOnly,
    readOnly: me?.role === 'counsel',
    record: record.data,
    lacks: lacks.data,
    error: blind ? null : asked.error,
    keptAt: asked.keptAt,
    again: () => {
      asked.again();
      record.again();
      lacks.again();
    },
  };
}
