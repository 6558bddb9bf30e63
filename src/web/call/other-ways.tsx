import { Link } from 'wouter-preact';
import { useStore } from '../app/store.js';
import { useOutbox } from '../device/outbox.js';
import { Section } from '../look/section.js';
import { tellClock } from '../look/tell-instant.js';
import { call as say } from '../words/call.js';
import { calls } from './call-store.js';
import { isOnlyHere } from './sync-call.js';
import { wordPair } from './word-pair.js';

/** The other calls of this phone, and the other ways to enter one. */
export function OtherWays({ current }: { current: string | null }) {
  const others = useStore(calls).filter(({ id }) => id !== current);
  const items = useOutbox();
  return (
    <div class="other-ways">
      {others.length > 0 && (
        <Section title={say.onThisPhone}>
          <ul class="links">
            {others.map((draft) => (
              <li key={draft.id}>
                <Link href={`/call/${draft.id}`}>
                  {tellClock(draft.taken.at)} {draft.reference ?? `“${wordPair(draft.id)}”`}{' '}
                  {draft.answers.craft?.value.join(', ')}
                  {isOnlyHere(draft, items) && <small> {say.state.here}</small>}
                </Link>
              </li>
            ))}
          </ul>
        </Section>
      )}
      <Section title={say.entries}>
        <ul class="links">
          {current !== null && (
            <li>
              <Link href="/call">{say.another}</Link>
            </li>
          )}
          <li>
            <Link href="/call?as=late">{say.enterLate}</Link>
          </li>
          <li>
            <Link href="/call?as=check-in">{say.enterCheckIn}</Link>
          </li>
          <li>
            <Link href="/call?as=paper">{say.enterPaper}</Link>
          </li>
          <li>
            <Link href="/call/sheet">{say.sheet}</Link>
          </li>
          <li>
            <Link href="/what-to-say">{say.whatToSay}</Link>
          </li>
        </ul>
      </Section>
    </div>
  );
}
