import type { QueuedItem } from '../device/outbox-item.js';
import { tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { usePickedPerson } from '../session/picked-person.js';
import { useSession } from '../session/session.js';
import { common } from '../words/common.js';
import { unsent as say } from '../words/unsent.js';
import { EntryActs } from './entry-acts.js';
import { EntryConflict } from './entry-conflict.js';
import { nameOf, saidBy, sizeOf } from './item-words.js';

interface EntryProps {
  readonly item: QueuedItem;
  readonly items: readonly QueuedItem[];
  /** Says on the page what was done, as the entry itself may be gone. */
  readonly onDone: (words: string) => void;
}

/** One entry: what it is, how far it has come, what it says, and what can be done where it was not taken. */
export function UnsentEntry({ item, items, onDone }: EntryProps) {
  const now = useNow();
  const { mine, mayOpen } = useWriter(item);
  const shut = !isOpening(item) && items.some((one) => one.line === item.line && isRefusedOpening(one));
  const who = mine ? say.byYou : item.by === null ? say.byNobody : say.byOther;
  const stuck = item.state === 'conflict' || item.state === 'refused';
  return (
    <article class="unsent-entry" aria-label={nameOf(item)}>
      <h3>{nameOf(item)}</h3>
      <p class="unsent-state">{common.sending[item.state]}</p>
      <p class="quiet">
        {say.written(tellInstant(item.queuedAt, undefined, now), who)}
        {item.kind === 'file' && `, ${say.file(item.name, sizeOf(item.size))}`}
      </p>
      {shut && <p>{say.waitsForOpening}</p>}
      {!mine && item.by !== null && <p>{say.waitsForPerson}</p>}
      {item.state === 'refused' && <Reasons item={item} />}
      {mayOpen && (
        <>
          {item.state === 'conflict' ? <EntryConflict item={item} /> : <Says item={item} />}
          {(stuck || shut) && <EntryActs item={item} items={items} shut={shut} onDone={onDone} />}
        </>
      )}
    </article>
  );
}

/** Whose entry it is, and whether who is there may see it: their own, nobody's, or any for a manager. */
function useWriter({ by }: QueuedItem): { mine: boolean; mayOpen: boolean } {
  const { me } = useSession();
  const picked = usePickedPerson();
  const who = me?.accountId ?? picked?.accountId ?? null;
  const mine = by !== null && by === who;
  const manages = me?.role === 'manager' || me?.role === 'administrator';
  return { mine, mayOpen: mine || by === null || manages };
}

function Says({ item }: { item: QueuedItem }) {
  const said = saidBy(item);
  if (said.length === 0) return null;
  return (
    <details>
      <summary>{say.see}</summary>
      <dl class="said">
        {said.map(({ at, words }) => (
          <div key={at}>
            <dt>{at}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
    </details>
  );
}

function Reasons({ item: { problem } }: { item: QueuedItem }) {
  if (problem === undefined) return null;
  return (
    <>
      <p class="fault">{problem.title}</p>
      <ul class="faults">
        {problem.errors.map(({ pointer, detail }) => (
          <li key={`${pointer} ${detail}`}>
            {pointer !== '' && <code>{pointer}</code>} {detail}
          </li>
        ))}
      </ul>
    </>
  );
}

const isOpening = (item: QueuedItem): boolean => item.kind === 'request' && item.opens === true;
const isRefusedOpening = (item: QueuedItem): boolean => isOpening(item) && item.state === 'refused';
