import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import '../lists/lists.css';
import { ErrorState, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { useSession } from '../session/session.js';
import { requests as say } from '../words/requests.js';
import type { RequestLine } from './request-answers.js';
import { RequestList } from './request-list.js';
import './requests.css';

/** The requests that concern one incident. */
export default function IncidentRequestsPage({ params: { id = '' } }: PageProps) {
  const path = `/api/incidents/${id}`;
  const incident = useAsk<{ reference: string }>(path);
  const listed = useAsk<{ items: readonly RequestLine[] }>(`${path}/requests`);
  const logs = useSession().me?.role !== 'counsel';
  const error = incident.error ?? listed.error;
  const again = (): void => {
    incident.again();
    listed.again();
  };
  if (incident.data === undefined || listed.data === undefined) {
    return (
      <Page title={say.ofIncidentTitle}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  return (
    <Page
      title={say.ofIncident(incident.data.reference)}
      lead={say.lead}
      {...(logs && {
        actions: (
          <Link href={`/requests/new?incident=${id}`} class="button main">
            {say.new}
          </Link>
        ),
      })}
    >
      <PrintedBy />
      <p class="links-line unprinted">
        <Link href={`/incidents/${id}`}>{say.toIncident}</Link>
        <Link href="/requests">{say.toList}</Link>
      </p>
      {error !== null && <ErrorState error={error} again={again} />}
      <RequestList items={listed.data.items} none={say.none.incident} />
    </Page>
  );
}
