import { useState } from 'preact/hooks';
import { useAskAll } from '../ask/use-ask-all.js';
import { bodyOf } from '../lists/draft.js';
import type { FieldSpec } from '../lists/field-spec.js';
import '../lists/lists.css';
import { ThingForm } from '../lists/thing-form.js';
import { useManages } from '../lists/use-manages.js';
import { useSend } from '../lists/use-send.js';
import { Fold } from '../look/fold.js';
import { Empty, ErrorState, KeptNote, Loading, Note, UndoStrip } from '../look/notes.js';
import { Page } from '../look/page.js';
import { dayIn } from '../look/tell-instant.js';
import { people } from '../words/en/people.js';
import { type Certificate, certificateSpecs } from './account.js';
import { CertificateLine } from './certificate-line.js';
import { PeopleLinks } from './people-links.js';
import { usePeople } from './use-people.js';

const { certificates: say, roster } = people;
const TOUCHES = ['/api/certificates', '/api/roster'];

/** Who is certified for what; what has ended or ends first comes first. */
export default function CertificatesPage() {
  const manages = useManages();
  const persons = usePeople(manages);
  const specs: readonly FieldSpec[] = [
    { name: 'accountId', label: say.person, as: 'one', options: persons, none: roster.none, required: true },
    ...certificateSpecs,
  ];
  const { data, error, keptAt, again } = useAskAll<Certificate>(`/api/certificates?day=${dayIn()}`, {
    keep: true,
  });
  const sending = useSend();
  const taking = useSend();
  const [away, setAway] = useState<Certificate | null>(null);
  const [noted, setNoted] = useState(false);
  const takeAway = async (one: Certificate): Promise<void> => {
    const asked = { method: 'DELETE', version: one.version } as const;
    if (await taking.does(`/api/certificates/${one.id}`, asked, TOUCHES)) setAway(one);
  };
  const putBack = async ({ accountId, title, number, issuedOn, expiresOn }: Certificate): Promise<void> => {
    const body = { accountId, title, number, issuedOn, expiresOn };
    if ((await taking.create('/api/certificates', body, TOUCHES)) !== undefined) setAway(null);
  };
  return (
    <Page title={say.title} lead={say.lead}>
      <PeopleLinks />
      <KeptNote keptAt={keptAt} />
      {away !== null && <UndoStrip undo={() => void putBack(away)}>{say.away(away.title)}</UndoStrip>}
      {taking.error !== null && <ErrorState error={taking.error} />}
      {error !== null && <ErrorState error={error} again={again} />}
      {data === undefined && error === null && <Loading />}
      {data?.length === 0 && <Empty>{say.empty}</Empty>}
      <ul class="log">
        {data?.map((one) => (
          <li key={one.id}>
            <CertificateLine
              certificate={one}
              touches={TOUCHES}
              mayChange={manages && keptAt === null}
              onTakeAway={() => void takeAway(one)}
            />
          </li>
        ))}
      </ul>
      {noted && <Note kind="saved">{say.noted}</Note>}
      {manages && (
        <Fold title={say.add}>
          {() => (
            <ThingForm
              specs={specs}
              submit={say.add}
              pending={sending.pending}
              error={sending.error}
              send={async (draft) => {
                const made = await sending.create('/api/certificates', bodyOf(specs, draft), TOUCHES);
                setNoted(made !== undefined);
                return made !== undefined;
              }}
            />
          )}
        </Fold>
      )}
    </Page>
  );
}
