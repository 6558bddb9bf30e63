import { useEffect, useState } from 'preact/hooks';
import { useOutbox, readOutbox } from '../device/outbox.js';
import { sendOutbox } from '../device/send-outbox.js';
import { StorageNote } from '../device/storage-note.js';
import { Button } from '../look/button.js';
import { Empty, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { Section } from '../look/section.js';
import { common } from '../words/common.js';
import { unsent as say } from '../words/unsent.js';
import { UnsentEntry } from './unsent-entry.js';
import './unsent.css';

type Reading = 'reading' | 'read' | 'unreadable';

/** What is only on this device, in the order in which it is sent, and what a person does about what was not taken. */
export default function UnsentPage() {
  const items = useOutbox();
  const [reading, setReading] = useState<Reading>('reading');
  const [trying, setTrying] = useState(false);
  const [tried, setTried] = useState(false);
  const [done, setDone] = useState<string | null>(null);
  const read = (): void => {
    readOutbox().then(
      () => setReading('read'),
      (error: unknown) => {
        console.warn('What this device keeps could not be read.', error);
        setReading('unreadable');
      },
    );
  };
  useEffect(read, []);
  const send = async (): Promise<void> => {
    setTrying(true);
    await sendOutbox();
    setTrying(false);
    setTried(true);
  };
  const left = items.some(({ state }) => state === 'waiting');
  return (
    <Page
      title={say.title}
      lead={say.lead}
      {...(left && {
        actions: (
          <Button look="main" busy={trying} onPress={() => void send()}>
            {say.sendNow}
          </Button>
        ),
      })}
    >
      <StorageNote />
      {reading === 'unreadable' && <Unreadable again={read} />}
      {trying && <Note>{say.trying}</Note>}
      {tried && !trying && left && <Note kind="offline">{say.notReached}</Note>}
      {done !== null && <Note kind="saved">{done}</Note>}
      {reading === 'reading' && <Loading />}
      {reading === 'read' && items.length === 0 && <Empty>{say.empty}</Empty>}
      {items.length > 0 && (
        <Section title={say.list}>
          <ol class="unsent">
            {items.map((item) => (
              <li key={item.id}>
                <UnsentEntry item={item} items={items} onDone={setDone} />
              </li>
            ))}
          </ol>
        </Section>
      )}
    </Page>
  );
}

function Unreadable({ again }: { again: () => void }) {
  return (
    <Note kind="error">
      <p>{say.unreadable}</p>
      <p>{common.sending.notKept}</p>
      <Button onPress={again}>{common.again}</Button>
    </Note>
  );
}
