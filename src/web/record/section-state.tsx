import { Link } from 'wouter-preact';
import { useStore } from '../app/store.js';
import { useOutbox } from '../device/outbox.js';
import { Note } from '../look/notes.js';
import { tellClock } from '../look/tell-instant.js';
import { common } from '../words/common.js';
import { record as say } from '../words/record.js';
import { draftsKept } from './draft-store.js';
import { isUnsaved, type SectionDraft } from './section-draft.js';
import { additionsOf, arrivals, queuedOf } from './sync-sections.js';

/** Where the words of a section are: typed, on this phone alone, or sent. */
export function SectionState({ draft }: { draft: SectionDraft }) {
  const items = useOutbox(draft.incident);
  const arrived = useStore(arrivals)[draft.id];
  const isKept = useStore(draftsKept);
  const queued = queuedOf(draft, items);
  const added = additionsOf(draft.incident, draft.section, items).length;
  if (!isKept) return <Note kind="error">{common.sending.notKept}</Note>;
  if (queued?.state === 'conflict') return <Note kind="error">{say.state.conflict}</Note>;
  if (queued?.state === 'refused') {
    return (
      <Note kind="error">
        <p>{say.state.refused}</p>
        <ul class="faults">
          {queued.problem?.errors.map(({ pointer, detail }) => (
            <li key={pointer}>{detail}</li>
          ))}
        </ul>
      </Note>
    );
  }
  if (queued !== undefined) return <Note kind="offline">{say.state.here}</Note>;
  if (added > 0) {
    return (
      <Note kind="offline">
        {say.state.here} <Link href="/unsent">{common.sending.waitingCount(added)}</Link>
      </Note>
    );
  }
  if (isUnsaved(draft)) return <Note>{say.state.writing}</Note>;
  if (arrived === undefined) return null;
  return (
    <Note kind="saved">
      {say.state.sent(tellClock(arrived.at))}
      {arrived.both && ` ${say.state.both}`}
    </Note>
  );
}
