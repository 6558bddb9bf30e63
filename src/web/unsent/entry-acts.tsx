import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { dropQueued, requeue } from '../device/outbox.js';
import type { QueuedFile, QueuedItem } from '../device/outbox-item.js';
import { Button } from '../look/button.js';
import { Dialog } from '../look/dialog.js';
import { Note } from '../look/notes.js';
import { unsent as say } from '../words/unsent.js';
import { incidentOf, keepAsNote, saveCopy, sendOver } from './item-acts.js';
import { asText, nameOf } from './item-words.js';

interface ActsProps {
  readonly item: QueuedItem;
  readonly items: readonly QueuedItem[];
  /** The entry that opens its line was not taken: nothing of the line can go before that. */
  readonly shut: boolean;
  readonly onDone: (words: string) => void;
}

/** What a person does about an entry that was not taken. Nothing is lost unless they say so twice. */
export function EntryActs({ item, items, shut, onDone }: ActsProps) {
  const [asking, setAsking] = useState(false);
  const incident = incidentOf(item);
  const discard = async (): Promise<void> => {
    await dropQueued(item.id);
    onDone(say.discarded(nameOf(item)));
  };
  return (
    <div class="entry-acts">
      {item.state === 'conflict' && item.kind === 'request' && item.about === 'record' && (
        <Link class="button" href={`/incidents/${item.line}/record/${item.path.split('/').at(-1) ?? ''}`}>
          {say.openSection}
        </Link>
      )}
      {item.state === 'conflict' && <Button onPress={() => void sendOver(item)}>{say.sendOver}</Button>}
      {item.state === 'refused' && <Button onPress={() => void requeue(item)}>{say.sendAgain}</Button>}
      {incident !== null && item.kind === 'request' && !shut && (
        <Button onPress={() => void keepAsNote(item, incident).then(() => onDone(say.noteKept))}>
          {say.keepNote}
        </Button>
      )}
      {item.kind === 'file' ? <SaveFile item={item} /> : <CopyWords words={asText(item)} />}
      <Button onPress={() => setAsking(true)}>{say.discard}</Button>
      {asking && (
        <Dialog title={say.confirm.title} onClose={() => setAsking(false)}>
          <p>
            <strong>{nameOf(item)}</strong>
          </p>
          <p>{say.confirm.text}</p>
          <Others count={items.filter(({ id, line }) => line === item.line && id !== item.id).length} />
          <div class="entry-acts">
            <Button look="main" onPress={() => setAsking(false)}>
              {say.confirm.no}
            </Button>
            <Button onPress={() => void discard()}>{say.confirm.yes}</Button>
          </div>
        </Dialog>
      )}
    </div>
  );
}

function Others({ count }: { count: number }) {
  return count === 0 ? null : <p>{say.confirm.others(count)}</p>;
}

/** A file leaves the device as it is; where the browser has thrown its bytes away, that is said. */
function SaveFile({ item }: { item: QueuedFile }) {
  const [gone, setGone] = useState(false);
  return (
    <>
      <Button onPress={() => void saveCopy(item).then((saved) => setGone(!saved))}>{say.download}</Button>
      {gone && <Note kind="error">{say.fileGone}</Note>}
    </>
  );
}

/** To the clipboard; where the browser refuses that, the words are shown to be marked by hand. */
function CopyWords({ words }: { words: string }) {
  const [copied, setCopied] = useState<boolean | null>(null);
  const copy = (): void => {
    // Without HTTPS a browser has no clipboard at all.
    const copying = navigator.clipboard?.writeText(words) ?? Promise.reject(new Error('No clipboard'));
    copying.then(
      () => setCopied(true),
      () => setCopied(false),
    );
  };
  return (
    <>
      <Button onPress={copy}>{say.copy}</Button>
      {copied === true && <Note kind="saved">{say.copied}</Note>}
      {copied === false && (
        <Note kind="error">
          <p>{say.notCopied}</p>
          <pre class="to-copy">{words}</pre>
        </Note>
      )}
    </>
  );
}
