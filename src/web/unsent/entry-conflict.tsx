import type { QueuedItem } from '../device/outbox-item.js';
import { unsent as say } from '../words/unsent.js';
import { differences } from './item-words.js';

/** What is here beside what stands with the service now, where they differ. */
export function EntryConflict({ item }: { item: QueuedItem }) {
  return (
    <>
      <p class="fault">{say.conflict}</p>
      <ul class="both">
        {differences(item).map(({ at, mine, theirs }) => (
          <li key={at}>
            <strong>{at}</strong>
            <dl>
              <dt>{say.mine}</dt>
              <dd>{mine}</dd>
              <dt>{say.theirs}</dt>
              <dd>{theirs}</dd>
            </dl>
          </li>
        ))}
      </ul>
    </>
  );
}
