import { useState } from 'preact/hooks';
import { REQUEST_WAYS, type RequestWay } from '../../../shared/record/legal-request.js';
import { useAsk } from '../ask/use-ask.js';
import { queueFile, queueRequest } from '../device/outbox.js';
import { StorageNote } from '../device/storage-note.js';
import '../lists/lists.css';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { momentOf } from '../look/moment.js';
import { Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { Select } from '../look/select.js';
import { TakePhotographs } from '../look/take-photographs.js';
import { ownZone } from '../look/tell-instant.js';
import { aboutOf, whatOf } from '../register/tell-line.js';
import type { RegisterLine } from '../register/register-answers.js';
import { useSession } from '../session/session.js';
import { servedPaper as inLog } from '../words/en/served-paper.js';
import { servedPaper as say } from '../words/served-paper.js';
import './requests.css';

/** Where papers wait on a device until there is signal. */
const LINE = 'served-papers';

/** The ways in which a paper comes to a counter. */
const WAYS: readonly RequestWay[] = REQUEST_WAYS.filter(
  (way) => way !== 'registered-agent' && way !== 'online',
);

const EMPTY = { from: '', way: undefined as RequestWay | undefined, receivedAt: '', incident: '', note: '' };

/** For whoever takes a paper at the counter: what to say, and that it came. Works without signal. */
export default function ServedPaperPage() {
  const [kept, setKept] = useState<{ incident: string } | null>(null);
  return (
    <Page title={say.title} lead={say.lead}>
      <ol class="request-say">
        {say.say.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ol>
      {kept === null ? (
        <PaperForm onKept={(incident) => setKept({ incident })} />
      ) : (
        <Kept incident={kept.incident} another={() => setKept(null)} />
      )}
      <StorageNote />
    </Page>
  );
}

function PaperForm({ onKept }: { onKept: (incident: string) => void }) {
  const zone = ownZone();
  const { me } = useSession();
  const incidents = useAsk<{ items: readonly RegisterLine[] }>(
    me === null ? null : '/api/register?status=open&limit=25',
    { keep: true },
  ).data?.items;
  const [draft, setDraft] = useState(EMPTY);
  const [looked, setLooked] = useState(false);
  const [failed, setFailed] = useState(false);
  const change = (part: Partial<typeof EMPTY>): void => setDraft({ ...draft, ...part });
  const receivedAt = momentOf(draft.receivedAt, zone);
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    const { from, way, incident, note } = draft;
    if (from.trim() === '' || way === undefined || receivedAt === null) return;
    const body = {
      from: from.trim(),
      way,
      receivedAt,
      ...(incident !== '' && { incident }),
      ...(note.trim() !== '' && { note: note.trim() }),
    };
    try {
      await queueRequest({
        line: LINE,
        about: inLog.title,
        method: 'POST',
        path: '/api/served-papers',
        body,
      });
      onKept(incident);
    } catch (error) {
      console.warn('It could not be kept on this device.', error);
      setFailed(true);
    }
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Field
        label={say.from}
        value={draft.from}
        onInput={(from) => change({ from })}
        error={looked && draft.from.trim() === '' ? say.needed : null}
      />
      <Choice
        legend={say.way}
        options={WAYS.map((value) => ({ value, label: say.ways[value] }))}
        value={draft.way}
        onChoose={(way) => change({ way })}
        error={looked && draft.way === undefined ? say.wayNeeded : null}
      />
      <Field
        label={say.receivedAt}
        hint={say.receivedAtHint(zone)}
        type="datetime-local"
        value={draft.receivedAt}
        onInput={(text) => change({ receivedAt: text })}
        error={receivedAt === null ? say.notATime : null}
      />
      {incidents !== undefined && incidents.length > 0 && (
        <Select
          label={say.incident}
          value={draft.incident}
          none={say.incidentNone}
          optional
          onChoose={(incident) => change({ incident })}
          groups={[{ options: incidents.map((line) => ({ value: line.id, label: nameOf(line) })) }]}
        />
      )}
      <Field label={say.note} rows={3} value={draft.note} onInput={(note) => change({ note })} />
      {failed && <Note kind="error">{say.notKept}</Note>}
      <Button type="submit" look="main">
        {say.submit}
      </Button>
    </form>
  );
}

function nameOf(line: RegisterLine): string {
  const about = [whatOf(line), aboutOf(line)].filter((part) => part !== '').join(' · ');
  return `${line.reference}, ${about}`;
}

/** What is left to do: tell the manager, and photograph it where it can be kept. */
function Kept({ incident, another }: { incident: string; another: () => void }) {
  const [count, setCount] = useState(0);
  const keep = async (file: File): Promise<void> => {
    // Managers and counsel alone see it: a paper of a court may say more than the record does.
    await queueFile(incident, file, 'photograph', { caption: inLog.title, restricted: true });
    setCount((before) => before + 1);
  };
  return (
    <div class="form">
      <Note kind="saved">{say.kept}</Note>
      <p>{say.photographHint}</p>
      {incident !== '' && <TakePhotographs label={say.photograph} keep={keep} />}
      {count > 0 && <p role="status">{say.pictures(count)}</p>}
      <Button onPress={another}>{say.another}</Button>
    </div>
  );
}
