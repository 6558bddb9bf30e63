import { BlobReader } from '@zip.js/zip.js/lib/zip-core-native.js';
import { useState } from 'preact/hooks';
import { checkArchive, NoArchiveError } from '../../../shared/hand-over/check-archive.js';
import { tellPacketCheck } from '../../../shared/hand-over/tell-packet-check.js';
import type { PacketCheck } from '../../../shared/hand-over/verify-packet.js';
import type { LogHead } from '../../../shared/proof/merkle-log.js';
import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { Field } from '../look/field.js';
import { Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { check as say } from '../words/check.js';
import './check.css';
import { ChooseFile } from './choose-file.js';
import { lookAtStamps } from './look-at-stamps.js';
import { readRoots } from './read-roots.js';
import { Progress } from './progress.js';

type State =
  | { readonly is: 'waiting' }
  | { readonly is: 'working'; readonly done: number; readonly total: number }
  | { readonly is: 'broken' }
  | { readonly is: 'done'; readonly found: PacketCheck; readonly heads: number };

/** Anybody checks a packet here, in the browser; nothing of it leaves the device. */
export default function CheckPage() {
  const [file, setFile] = useState<File | null>(null);
  const [head, setHead] = useState('');
  const [trusted, setTrusted] = useState<File | null>(null);
  const [isNoRoots, setNoRoots] = useState(false);
  const [state, setState] = useState<State>({ is: 'waiting' });
  const [pressed, setPressed] = useState(false);
  const heads = headsIn(head);
  const start = async (event: Event): Promise<void> => {
    event.preventDefault();
    setPressed(true);
    if (file === null || heads === null || state.is === 'working') return;
    const roots = trusted === null ? [] : await readRoots(trusted);
    setNoRoots(roots === null);
    if (roots === null) return;
    setState({ is: 'working', done: 0, total: file.size });
    try {
      const tell = (done: number, total: number) => setState({ is: 'working', done, total });
      const archive = await checkArchive(new BlobReader(file), heads, { tell });
      const found = await lookAtStamps(archive, roots);
      setState({ is: 'done', found, heads: heads.length });
    } catch (error) {
      if (!(error instanceof NoArchiveError)) throw error;
      setState({ is: 'broken' });
    }
  };
  return (
    <Page title={say.title} lead={say.lead}>
      <form class="form" onSubmit={(event) => void start(event)} noValidate>
        <ChooseFile
          label={say.file}
          accept=".zip,application/zip"
          error={pressed && file === null ? say.noFile : null}
          onChoose={(chosen) => {
            setFile(chosen);
            setState({ is: 'waiting' });
          }}
        />
        <Field
          label={say.head}
          hint={say.headHint}
          value={head}
          onInput={setHead}
          error={heads === null ? say.headFault : null}
        />
        <Fold title={say.roots.title}>
          {() => (
            <ChooseFile
              label={say.roots.label}
              hint={say.roots.hint}
              accept=".pem,.crt,.cer"
              error={isNoRoots ? say.roots.fault : null}
              onChoose={(chosen) => {
                setTrusted(chosen);
                setNoRoots(false);
                setState({ is: 'waiting' });
              }}
            />
          )}
        </Fold>
        <Button type="submit" look="main" busy={state.is === 'working'}>
          {say.button}
        </Button>
      </form>
      {state.is === 'working' && <Progress done={state.done} total={state.total} />}
      {state.is === 'broken' && (
        <Note kind="error">
          <p>
            <strong>{say.unreadable}</strong>
          </p>
          <p>{say.noArchive}</p>
        </Note>
      )}
      {state.is === 'done' && <Result found={state.found} heads={state.heads} />}
    </Page>
  );
}

function Result({ found, heads }: { found: PacketCheck; heads: number }) {
  const good = found.packet !== null && found.faults.length === 0;
  const verdict = found.packet === null ? say.unreadable : good ? say.good : say.bad;
  return (
    <Section title={say.said}>
      <div role={good ? 'status' : 'alert'}>
        <p class={good ? 'verdict' : 'verdict bad'}>
          <Sign of={good ? 'yes' : 'no'} />
          {verdict}
        </p>
        <ul class="check-lines">
          {tellPacketCheck(found, heads).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </div>
      <h3>{say.means}</h3>
      <p>{good ? say.meansGood : say.meansBad}</p>
    </Section>
  );
}

const HEAD = /^(\d{1,15}):([0-9a-f]{64})$/;

/** None for an empty field, null for what is no head. */
function headsIn(text: string): LogHead[] | null {
  if (text.trim() === '') return [];
  const [, size, root] = HEAD.exec(text.trim().toLowerCase()) ?? [];
  return size === undefined || root === undefined ? null : [{ size: Number(size), root }];
}
