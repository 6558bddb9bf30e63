import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { Button } from '../look/button.js';
import { Empty, ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { shiftHandOver as say } from '../words/shift-hand-over.js';
import { BeginForm } from './begin-form.js';
import { HAND_OVERS, type HandOverAnswer, type HandOversAnswer } from './hand-over-answer.js';

const PART = 10;
const MOST = 100;

/** Begins a hand-over, and shows those before: what still waits for a signature first. */
export function HandOverList() {
  const [limit, setLimit] = useState(PART);
  const { data, error, keptAt, again } = useAsk<HandOversAnswer>(`${HAND_OVERS}?limit=${limit}`, {
    keep: true,
  });
  const [newest] = data?.items ?? [];
  const waiting = newest !== undefined && newest.incomingName === null ? newest : undefined;
  const earlier = (data?.items ?? []).filter((one) => one !== waiting);
  return (
    <Page title={say.title}>
      <KeptNote keptAt={keptAt} />
      {waiting !== undefined && (
        <Section title={say.waits}>
          <Lines of={[waiting]} />
        </Section>
      )}
      <Section title={say.begin.title}>
        <BeginForm />
      </Section>
      <Section title={say.earlier}>
        {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
        {data !== undefined && earlier.length === 0 && (
          <Empty>
            <p>{say.none}</p>
          </Empty>
        )}
        <Lines of={earlier} />
        {data !== undefined && data.next !== null && limit < MOST && (
          <Button onPress={() => setLimit(MOST)}>{say.more}</Button>
        )}
      </Section>
    </Page>
  );
}

function Lines({ of }: { of: readonly HandOverAnswer[] }) {
  const now = useNow();
  return (
    <ul class="hand-over-lines">
      {of.map(({ id, summary, builtBy, outgoingName, incomingName }) => (
        <li key={id}>
          <Link href={`/shift-hand-over/${id}`}>
            <strong>{tellInstant(summary.asOf, undefined, now)}</strong>
            <span class="quiet">
              {say.by(builtBy)} · {signedBy(outgoingName, incomingName)}
            </span>
          </Link>
        </li>
      ))}
    </ul>
  );
}

function signedBy(outgoing: string | null, incoming: string | null): string {
  if (outgoing === null) return say.nobody;
  return incoming === null ? say.onlyOutgoing(outgoing) : say.both(outgoing, incoming);
}
