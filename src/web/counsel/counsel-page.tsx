import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import { useAskAll } from '../ask/use-ask-all.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { useSession } from '../session/session.js';
import { counsel as say } from '../words/counsel.js';
import { AssignedPart } from './assigned-part.js';
import type { AccountLine } from './counsel-answers.js';
import './counsel.css';
import { HoldsPart } from './holds-part.js';
import { NotesPart } from './notes-part.js';

/** What must be kept, which lawyers read the incident, and the notes that they asked for. */
export default function CounselPage({ params: { id = '' } }: PageProps) {
  const role = useSession().me?.role;
  const isManager = role === 'manager' || role === 'administrator';
  const incident = useAsk<{ reference: string }>(`/api/incidents/${id}`);
  const accounts = useAskAll<AccountLine>(isManager ? '/api/accounts' : null);
  if (incident.data === undefined) {
    return (
      <Page title={say.title}>
        {incident.error === null ? <Loading /> : <ErrorState error={incident.error} again={incident.again} />}
      </Page>
    );
  }
  const active = accounts.data?.filter((account) => account.active);
  const lawyers = active?.filter((account) => account.role === 'counsel');
  return (
    <Page title={say.title} lead={say.lead(incident.data.reference)}>
      <PrintedBy />
      <p class="links-line unprinted">
        <Link href={`/incidents/${id}`}>{say.back}</Link>
      </p>
      <HoldsPart incident={id} accounts={active} />
      {role !== 'staff' && (
        <>
          <AssignedPart incident={id} lawyers={lawyers} />
          <NotesPart incident={id} isCounsel={role === 'counsel'} lawyers={lawyers ?? []} />
        </>
      )}
    </Page>
  );
}
