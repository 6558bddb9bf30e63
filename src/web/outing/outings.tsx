import { useState } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import { Fold } from '../look/fold.js';
import { StorageNote } from '../device/storage-note.js';
import { useOutbox } from '../device/outbox.js';
import { Empty, ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { tellClock } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { outAndBack as say } from '../words/out-and-back.js';
import { ImportForm } from './import-form.js';
import { layOver } from './lay-over.js';
import { OutingActions } from './outing-actions.js';
import { OUTING_LINE } from './outing-queue.js';
import type { Outing, WhereAnswer } from './service-answers.js';
import { StandingGroups } from './standing-groups.js';
import { useMarking } from './use-marking.js';
import { WaitingNotes } from './waiting-notes.js';

const LOOK_AGAIN_MS = 60_000;

/** The list for those who work here, with names and numbers. */
export function Outings() {
  const { data, error, keptAt, again } = useAsk<WhereAnswer>('/api/outings', {
    keep: true,
    everyMs: LOOK_AGAIN_MS,
  });
  const waiting = useOutbox(OUTING_LINE);
  const now = useNow();
  const { markBack, openNotBack, failure } = useMarking();
  const [form, setForm] = useState<Outing | 'new' | null>(null);
  if (data === undefined) {
    return (
      <Page title={say.title}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const craft = layOver(data.items, waiting, now);
  return (
    <Page
      title={say.title}
      lead={say.asOf(tellClock(data.asOf))}
      actions={<OutingActions form={form} setForm={setForm} units={craft.map(({ unitName }) => unitName)} />}
    >
      <KeptNote keptAt={keptAt} />
      {keptAt === null && error !== null && <ErrorState error={error} again={again} />}
      {failure}
      <WaitingNotes line={OUTING_LINE} />
      {craft.length === 0 ? (
        <Empty>
          <p>{say.noFleet}</p>
        </Empty>
      ) : (
        <StandingGroups
          craft={craft}
          onBack={({ unitName }) => markBack(unitName)}
          onNotBack={({ unitName }) => openNotBack(unitName)}
          onChange={({ outing }) => setForm(outing)}
        />
      )}
      <Fold title={say.list.title}>{() => <ImportForm />}</Fold>
      <StorageNote />
    </Page>
  );
}
