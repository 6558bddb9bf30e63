import { Link } from 'wouter-preact';
import { common } from '../words/common.js';
import { unsent as say } from '../words/unsent.js';
import { useOutbox } from './outbox.js';

/** On every page: how much is only on this device. It stands in the line of the head, so that nothing moves when it comes. */
export function UnsentBadge() {
  const { length } = useOutbox();
  if (length === 0) return null;
  return (
    <Link class="unsent-badge" href="/unsent">
      {say.badge(length)}
      <span class="unseen">: {common.sending.waitingCount(length)}</span>
    </Link>
  );
}
