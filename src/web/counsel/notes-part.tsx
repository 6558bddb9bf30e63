import { useState } from 'preact/hooks';
import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import { Fold } from '../look/fold.js';
import { Empty, ErrorState, Loading, Note } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { counsel as say } from '../words/counsel.js';
import type { AccountLine, CounselRequest } from './counsel-answers.js';
import { WordsForm } from './words-form.js';

interface NotesPartProps {
  readonly incident: string;
  /** Assigned counsel reads what was written; whoever writes it does not. */
  readonly isCounsel: boolean;
  readonly lawyers: readonly AccountLine[];
}

/** What counsel asked for, and what was written for it. */
export function NotesPart({ incident, isCounsel, lawyers }: NotesPartProps) {
  const path = `/api/incidents/${incident}/${isCounsel ? 'privileged' : 'counsel-requests'}`;
  const { data, error, again } = useAsk<readonly CounselRequest[]>(path);
  const form = useCreate(`/api/incidents/${incident}/counsel-requests`, incident);
  return (
    <Section title={say.notes.title}>
      <p class="quiet">{say.notes.lead}</p>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.length === 0 && <Empty>{say.notes.none}</Empty>}
      {data?.map((request) => (
        <article class="counsel-hold" key={request.id}>
          <h3>{say.notes.asked(request.counsel, request.requestedOn)}</h3>
          {isCounsel ? <Entries request={request} /> : <NoteForm incident={incident} request={request} />}
        </article>
      ))}
      {!isCounsel && (
        <Fold title={say.notes.request}>
          {() => (
            <WordsForm
              {...form}
              fields={[
                { name: 'counsel', label: say.holds.counsel },
                { name: 'requestedOn', label: say.notes.requestedOn, type: 'date' },
                {
                  name: 'counselAccount',
                  label: say.notes.account,
                  none: say.notes.noAccount,
                  options: lawyers.map(({ id, name }) => ({ value: id, label: name })),
                },
              ]}
              button={say.notes.requestIt}
            />
          )}
        </Fold>
      )}
    </Section>
  );
}

function Entries({ request: { entries = [] } }: { request: CounselRequest }) {
  if (entries.length === 0) return <p class="quiet">{say.notes.empty}</p>;
  return (
    <ul class="counsel-notes">
      {entries.map(({ id, words, writtenBy, writtenAt }) => (
        <li key={id}>
          <p class="counsel-words">{words}</p>
          <p class="quiet">{say.notes.by(writtenBy, tellInstant(writtenAt))}</p>
        </li>
      ))}
    </ul>
  );
}

function NoteForm({ incident, request }: { incident: string; request: CounselRequest }) {
  const [kept, setKept] = useState(false);
  const { send, ...form } = useCreate(
    `/api/incidents/${incident}/counsel-requests/${request.id}/entries`,
    incident,
  );
  const keep = async (body: Readonly<Record<string, string>>): Promise<boolean> => {
    const taken = await send(body);
    setKept(taken);
    return taken;
  };
  return (
    <Fold title={say.notes.write(request.counsel)}>
      {() => (
        <>
          <WordsForm
            {...form}
            send={keep}
            fields={[{ name: 'words', label: say.notes.words, hint: say.notes.wordsHint, rows: 5 }]}
            button={say.notes.keep}
          />
          {kept && <Note kind="saved">{say.notes.kept}</Note>}
        </>
      )}
    </Fold>
  );
}

/** Makes one thing for each press that was taken: a second press on the same words makes nothing twice. */
function useCreate(path: string, incident: string) {
  const { tell, pending, error } = useTell();
  const [key, setKey] = useState(() => crypto.randomUUID() as string);
  const send = async (body: object): Promise<boolean> => {
    const made = await tell(path, { method: 'POST', body, key }, [`/api/incidents/${incident}`]);
    if (made !== undefined) setKey(crypto.randomUUID());
    return made !== undefined;
  };
  return { send, pending, error };
}
