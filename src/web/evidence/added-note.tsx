import { useOutbox } from '../device/outbox.js';
import { Note } from '../look/notes.js';
import { common } from '../words/common.js';
import { evidence as say } from '../words/evidence.js';
import type { Adding } from './use-add.js';

/** How an addition came out: kept and on its way, or not kept. */
export function AddedNote({ state }: Pick<Adding, 'state'>) {
  if (state === 'not-yet') return null;
  if (state === 'not-kept') return <Note kind="error">{common.sending.notKept}</Note>;
  return <Note kind="saved">{say.custody.saved}</Note>;
}

/** What waits on this device of a list, each in a line. */
export function WaitingLines({
  incident,
  list,
  member,
}: {
  incident: string;
  list: string;
  member: 'what' | 'to';
}) {
  const waiting = useOutbox(incident).filter(
    (item) => item.kind === 'request' && item.path === `/api/incidents/${incident}/${list}`,
  );
  return (
    <>
      {waiting.map((item) => (
        <p key={item.id}>
          {item.kind === 'request' && (item.body as Partial<Record<typeof member, string>>)[member]}{' '}
          <small>{common.sending[item.state]}</small>
        </p>
      ))}
    </>
  );
}
