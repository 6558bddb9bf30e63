import { Link } from 'wouter-preact';
import { useStore } from '../app/store.js';
import { useOutbox } from '../device/outbox.js';
import { Note } from '../look/notes.js';
import { tellClock } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { call as say } from '../words/call.js';
import { common } from '../words/common.js';
import type { CallDraft } from './call-draft.js';
import { kept } from './call-store.js';
import { isOnlyHere } from './sync-call.js';

/** Whether what was said is only on this phone, or has arrived. */
export function CallState({ draft }: { draft: CallDraft }) {
  const items = useOutbox(draft.id);
  const { me } = useSession();
  const isKept = useStore(kept);
  if (!isKept) return <Note kind="error">{say.state.notKept}</Note>;
  const refused = items.filter(({ state }) => state === 'refused');
  const onlyHere = isOnlyHere(draft, items);
  return (
    <>
      <Note kind={onlyHere ? 'offline' : 'saved'}>
        <span>{onlyHere ? say.state.here : say.state.sent(tellClock(draft.sentAt ?? draft.taken.at))}</span>
        {me !== null && <RecordLink draft={draft} />}
      </Note>
      {Object.values(draft.parts).some(({ both }) => both) && <Note>{say.state.both}</Note>}
      {refused.map(({ id, problem }) => (
        <Note kind="error" key={id}>
          {common.sending.refused}: {problem?.errors.map(({ detail }) => detail).join(' ')}
        </Note>
      ))}
    </>
  );
}

/** Takes its room before there is a record to open: the answers below must not move when it appears. */
function RecordLink({ draft }: { draft: CallDraft }) {
  if (draft.reference === undefined) return <span class="record-link" />;
  return (
    <Link class="record-link" href={`/incidents/${draft.id}`}>
      {say.state.openRecord}
    </Link>
  );
}
