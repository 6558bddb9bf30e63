import { useState } from 'preact/hooks';
import { Link, useLocation } from 'wouter-preact';
import { AskError } from '../ask/ask-error.js';
import { useAsk } from '../ask/use-ask.js';
import { useChoices } from '../call/use-choices.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { Section } from '../look/section.js';
import { tellClock, tellDay } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { closingCount as say } from '../words/closing-count.js';
import type { CountView } from './count-answers.js';
import { CountLinks } from './count-links.js';
import { beginCount } from './count-queue.js';

const addressOf = (id: string): string => `/out-and-back/closing-count/${id}`;
const FLEET = 'fleet';

/** Begins a count, or leads to the one that is open, and to those that were signed. */
export function BeginCount() {
  const { me } = useSession();
  const [, go] = useLocation();
  const { stations, craft } = useChoices();
  const [chosen, setChosen] = useState<string>(FLEET);
  const [pending, setPending] = useState(false);
  const [error, setError] = useState<AskError | null>(null);
  const begin = async (): Promise<void> => {
    setPending(true);
    setError(null);
    try {
      const units = craft.map(({ unitName }) => unitName);
      go(addressOf(await beginCount(chosen === FLEET ? undefined : chosen, units)));
    } catch (caught) {
      if (!(caught instanceof AskError)) throw caught;
      setError(caught);
      setPending(false);
    }
  };
  return (
    <Page
      title={say.title}
      lead={say.lead}
      actions={
        <Button look="main" busy={pending} onPress={() => void begin()}>
          {say.begin.press}
        </Button>
      }
    >
      {error !== null && <ErrorState error={error} />}
      {stations.length > 0 && (
        <Choice
          legend={say.begin.where}
          options={[
            { value: FLEET, label: say.begin.fleet },
            ...stations.map(({ id, name }) => ({ value: id, label: say.begin.station(name) })),
          ]}
          value={chosen}
          onChoose={setChosen}
        />
      )}
      {me !== null && <Earlier />}
      <CountLinks />
    </Page>
  );
}

function Earlier() {
  const { data, error, keptAt, again } = useAsk<{ items: readonly CountView[] }>('/api/closing-counts', {
    keep: true,
  });
  return (
    <Section title={say.earlier}>
      <KeptNote keptAt={keptAt} />
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.items.length === 0 && <p>{say.begin.none}</p>}
      <ul class="links">
        {data?.items.map(({ id, day, closedAt, closedBy }) => (
          <li key={id}>
            <Link href={addressOf(id)}>
              {closedAt === null
                ? say.open(tellDay(day))
                : say.closed(tellDay(day), closedBy ?? '', tellClock(closedAt))}
            </Link>
          </li>
        ))}
      </ul>
    </Section>
  );
}
