import { useState } from 'preact/hooks';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Fold } from '../look/fold.js';
import { ErrorState } from '../look/notes.js';
import { tellInstant } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { evidence as say } from '../words/evidence.js';
import type { FileAnswer } from './evidence-answers.js';

interface FileCardProps {
  readonly incident: string;
  readonly file: FileAnswer;
  readonly timeZone: string | undefined;
}

/** The longer edge of a thumbnail, in pixels. */
const SMALL = 320;

/** One file: a small picture of it, what it shows, what it leaves open, and the original. */
export function FileCard({ incident, file, timeZone }: FileCardProps) {
  const mayWrite = useSession().me?.role !== 'counsel';
  const { id, kind, about, name, receivedAt, size, withdrawn, questions, isRestricted } = file;
  const address = `/api/incidents/${incident}/evidence/${id}`;
  const caption = about.caption ?? name ?? say.files.unnamed;
  return (
    <li class="file">
      {file.previews.includes(SMALL) && (
        <img src={`${address}/previews/${SMALL}`} alt={caption} loading="lazy" />
      )}
      <div>
        <strong>{caption}</strong>
        <p class="quiet">
          {say.files.kinds[kind]}, {tellSize(size)}
          {about.takenBy !== undefined && `, ${say.files.by(about.takenBy)}`},{' '}
          {say.files.arrived(tellInstant(receivedAt, timeZone))}
        </p>
        {isRestricted && <p>{say.files.restricted}</p>}
        {questions.map(({ text }) => (
          <p key={text}>{text}</p>
        ))}
        {withdrawn !== undefined && (
          <p>{say.files.withdrawn(tellInstant(withdrawn.at, timeZone), withdrawn.by, withdrawn.reason)}</p>
        )}
        {withdrawn === undefined && (
          <p class="links-line unprinted">
            <a href={`${address}/original`} download={name ?? id} aria-label={say.files.originalOf(caption)}>
              {say.files.original}
            </a>
          </p>
        )}
        {mayWrite && withdrawn === undefined && (
          <Fold title={say.files.describe}>{() => <WordsForm address={address} file={file} />}</Fold>
        )}
      </div>
    </li>
  );
}

/** Bytes in the unit in which a person reads them. */
function tellSize(bytes: number): string {
  return bytes < 1_000_000 ? `${Math.ceil(bytes / 1000)} kB` : `${(bytes / 1_000_000).toFixed(1)} MB`;
}

/** Other words about a file; whatever else was said of it stays as it was. */
function WordsForm({ address, file }: { address: string; file: FileAnswer }) {
  const [caption, setCaption] = useState(file.about.caption ?? '');
  const [reason, setReason] = useState('');
  const [looked, setLooked] = useState(false);
  const { tell, pending, error } = useTell();
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (caption.trim() === '' || reason.trim() === '' || pending) return;
    const body = { about: { ...file.about, caption: caption.trim() }, reason: reason.trim() };
    const changed = await tell(address, { method: 'PATCH', body, version: file.version }, [
      address.slice(0, address.lastIndexOf('/')),
    ]);
    if (changed === undefined) return;
    setReason('');
    setLooked(false);
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Field
        label={say.files.caption}
        value={caption}
        onInput={setCaption}
        error={looked && caption.trim() === '' ? say.files.lacksCaption : error?.faultAt('/about/caption')}
      />
      <Field
        label={say.files.reason}
        value={reason}
        onInput={setReason}
        error={looked && reason.trim() === '' ? say.files.lacksReason : error?.faultAt('/reason')}
      />
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" busy={pending}>
        {say.files.save}
      </Button>
    </form>
  );
}
