import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { StorageNote } from '../device/storage-note.js';
import { Button } from '../look/button.js';
import { Empty, ErrorState, KeptNote, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { tellDay } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { common } from '../words/common.js';
import { closingCount as say } from '../words/closing-count.js';
import { answerCount, countPath } from './count-queue.js';
import { CountOutcome } from './count-outcome.js';
import { CountRow } from './count-row.js';
import { CountLinks } from './count-links.js';
import type { CountAnswer } from './service-answers.js';
import type { CountHere } from './use-count.js';
import { WaitingNotes } from './waiting-notes.js';

interface CountSheetProps {
  readonly here: CountHere;
  readonly keptAt: string | null;
}

/** A count that is going on: how many are left as the figure, each craft with its three answers, and the signature. */
export function CountSheet({ here: { view, known, craft, waiting }, keptAt }: CountSheetProps) {
  const { me } = useSession();
  const [looked, setLooked] = useState(false);
  const [notKept, setNotKept] = useState(false);
  const { tell, pending, error } = useTell();
  const left = craft.filter(({ answer }) => answer === null).map(({ unitName }) => unitName);
  const answer = (unit: string) => (said: CountAnswer, where: string | null) => {
    answerCount(known.id, unit, said, where).catch((caught: unknown) => {
      console.warn('An answer could not be kept.', caught);
      setNotKept(true);
    });
  };
  const close = async (): Promise<void> => {
    setLooked(true);
    if (left.length > 0 || waiting > 0) return;
    const path = countPath(known.id);
    await tell(`${path}/closing`, { method: 'POST', version: known.version }, [
      '/api/closing-counts',
      '/api/outings',
      '/api/not-back',
    ]);
  };
  if (view !== undefined && view.closedAt !== null) return <CountOutcome view={view} />;
  return (
    <Page
      title={say.title}
      lead={
        <>
          <p>{tellDay(known.day)}</p>
          <p>{say.lead}</p>
        </>
      }
      figure={
        <p class="deadline first" role="status">
          <strong>{left.length === 0 ? say.allAnswered : say.left(left.length)}</strong>
          <span class="quiet">{say.of(craft.length)}</span>
        </p>
      }
      actions={
        me === null ? (
          <p>{say.signDevice}</p>
        ) : (
          <>
            {looked && left.length > 0 && <Note kind="error">{say.missing(left.join(', '))}</Note>}
            {looked && left.length === 0 && waiting > 0 && <Note kind="offline">{say.waiting}</Note>}
            {error !== null && <ErrorState error={error} />}
            <Button look="main" busy={pending} onPress={() => void close()}>
              {say.sign}
            </Button>
          </>
        )
      }
    >
      <KeptNote keptAt={keptAt} />
      {notKept && <Note kind="error">{common.sending.notKept}</Note>}
      <WaitingNotes line={known.id} />
      {craft.length === 0 ? (
        <Empty>
          <p>{say.noCraft}</p>
        </Empty>
      ) : (
        <ul class="craft-list">
          {craft.map((one) => (
            <CountRow key={one.unitName} craft={one} onAnswer={answer(one.unitName)} />
          ))}
        </ul>
      )}
      <CountLinks />
      <StorageNote />
    </Page>
  );
}
