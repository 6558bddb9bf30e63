import { useState } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Loading, Note } from '../look/notes.js';
import { tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { followUp as say } from '../words/follow-up.js';
import type { FeedAnswer, Listed, NewFeedAnswer } from './service-answers.js';

const PATH = '/api/calendar-feeds';

/** The secret address at which a calendar program reads one's tasks: made, copied this once, and stopped. */
export function CalendarFeed() {
  const now = useNow();
  const { data, error, again } = useAsk<Listed<FeedAnswer>>(PATH);
  const telling = useTell();
  const [key, setKey] = useState(() => crypto.randomUUID());
  const [address, setAddress] = useState<string | null>(null);
  const [revoked, setRevoked] = useState(false);
  if (data === undefined) return error === null ? <Loading /> : <ErrorState error={error} again={again} />;
  const [feed] = data.items;
  const make = async (): Promise<void> => {
    const made = await telling.tell<NewFeedAnswer>(PATH, { method: 'POST', body: {}, key }, [PATH]);
    setKey(crypto.randomUUID());
    setRevoked(false);
    if (made !== undefined) setAddress(made.path === null ? null : `${location.origin}${made.path}`);
  };
  const revoke = async (id: string): Promise<void> => {
    await telling.tell(`${PATH}/${id}`, { method: 'DELETE' }, [PATH]);
    setAddress(null);
    setRevoked(true);
  };
  return (
    <div class="form">
      <p>{say.calendar.lead}</p>
      {telling.error !== null && <ErrorState error={telling.error} />}
      {address !== null && <OnceAddress address={address} />}
      {revoked && telling.error === null && <Note kind="saved">{say.calendar.revoked}</Note>}
      {address === null && (
        <p>
          {feed === undefined
            ? say.calendar.none
            : say.calendar.since(tellInstant(feed.createdAt, undefined, now))}
        </p>
      )}
      <div class="buttons">
        <Button busy={telling.pending} onPress={() => void make()}>
          {feed === undefined ? say.calendar.make : say.calendar.renew}
        </Button>
        {feed !== undefined && (
          <Button busy={telling.pending} onPress={() => void revoke(feed.id)}>
            {say.calendar.revoke}
          </Button>
        )}
      </div>
    </div>
  );
}

function OnceAddress({ address }: { address: string }) {
  const [copied, setCopied] = useState<boolean | null>(null);
  const copy = (): void => {
    // Without HTTPS a browser has no clipboard at all.
    const copying = navigator.clipboard?.writeText(address) ?? Promise.reject(new Error('No clipboard'));
    copying.then(
      () => setCopied(true),
      () => setCopied(false),
    );
  };
  return (
    <>
      <p>
        <strong>{say.calendar.once}</strong>
      </p>
      <Field label={say.calendar.address} value={address} onInput={() => undefined} readOnly />
      <Button look="main" onPress={copy}>
        {say.calendar.copy}
      </Button>
      {copied === true && <Note kind="saved">{say.calendar.copied}</Note>}
      {copied === false && <Note kind="error">{say.calendar.notCopied}</Note>}
    </>
  );
}
