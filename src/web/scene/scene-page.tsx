import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import { useOutbox } from '../device/outbox.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Empty, ErrorState, KeptNote, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { useSession } from '../session/session.js';
import { common } from '../words/common.js';
import { scene as say } from '../words/scene.js';
import { SceneEditor } from './scene-editor.js';
import { SceneSketch } from './scene-sketch.js';
import { SceneText } from './scene-text.js';
import './scene.css';
import { useScene, type SceneAtHand } from './use-scene.js';

/** The water seen from above: drawn by staff, read by counsel. */
export default function ScenePage({ params: { id = '' } }: PageProps) {
  const { me } = useSession();
  const incident = useAsk<{ reference: string }>(`/api/incidents/${id}`, { keep: true });
  const scene = useScene(id);
  const lead = incident.data === undefined ? undefined : say.lead(incident.data.reference);
  const isDrawer = me !== null && me.role !== 'counsel';
  if (!scene.loaded) {
    return (
      <Page title={say.title} lead={lead}>
        {scene.error === null ? <Loading /> : <ErrorState error={scene.error} again={scene.again} />}
      </Page>
    );
  }
  return (
    <Page
      title={say.title}
      lead={lead}
      {...(isDrawer && scene.isChanged && { actions: <SaveBar scene={scene} /> })}
    >
      <KeptNote keptAt={scene.keptAt} />
      <PrintedBy />
      <p class="links-line unprinted">
        <Link href={`/incidents/${id}`}>{say.back}</Link>
      </p>
      <WaitingNote incident={id} />
      {isDrawer ? <SceneEditor hands={scene} /> : <SceneToRead scene={scene} />}
    </Page>
  );
}

function SceneToRead({ scene: { ready, draft } }: { scene: SceneAtHand }) {
  if (ready.marks.length === 0 && ready.lines.length === 0) return <Empty>{say.readOnlyEmpty}</Empty>;
  return (
    <>
      <SceneSketch scene={ready} label={say.title} />
      {draft.drawnBy !== undefined && <p class="quiet">{say.by(draft.drawnBy)}</p>}
      <SceneText scene={ready} />
    </>
  );
}

/** What of the sketch is only on this device, and what the service did not take. */
function WaitingNote({ incident }: { incident: string }) {
  const waiting = useOutbox(incident).find(
    (item) => item.kind === 'request' && item.path.endsWith('/sections/scene'),
  );
  if (waiting === undefined) return null;
  if (waiting.state === 'waiting' || waiting.state === 'sending') {
    return <Note kind="offline">{say.waiting}</Note>;
  }
  return (
    <Note kind="error">
      <p>{common.sending[waiting.state]}</p>
      <Link href="/unsent">{say.settle}</Link>
    </Note>
  );
}

function SaveBar({ scene }: { scene: SceneAtHand }) {
  const [reason, setReason] = useState('');
  return (
    <>
      {scene.stood && <Field label={say.reason} hint={say.reasonHint} value={reason} onInput={setReason} />}
      <Button look="main" onPress={() => void scene.save(reason)}>
        {say.save}
      </Button>
      <Button look="plain" onPress={scene.discard}>
        {say.discard}
      </Button>
    </>
  );
}
