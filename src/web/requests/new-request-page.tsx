import { useRef, useState } from 'preact/hooks';
import { useLocation, useSearch } from 'wouter-preact';
import { callsForHold, type RequestKind } from '../../../shared/record/legal-request.js';
import { useAsk } from '../ask/use-ask.js';
import { useAskAll } from '../ask/use-ask-all.js';
import { useTell } from '../ask/use-tell.js';
import type { AccountLine } from '../counsel/counsel-answers.js';
import '../lists/lists.css';
import { Button } from '../look/button.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { Section } from '../look/section.js';
import { ownZone } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { requests as say } from '../words/requests.js';
import { IncidentsField } from './incidents-field.js';
import { RequestFaults } from './request-faults.js';
import { type ChosenIncident, detailsBody, emptyRequest, incidentsBody, textOf } from './request-draft.js';
import { RequestFields } from './request-form.js';
import type { RequestView } from './request-answers.js';
import './requests.css';

/** Logs a request; an incident may be named in the address. */
export default function NewRequestPage() {
  const about = new URLSearchParams(useSearch()).get('incident');
  const incident = useAsk<{ id: string; reference: string }>(
    about === null ? null : `/api/incidents/${about}`,
  );
  if (about !== null && incident.data === undefined) {
    return (
      <Page title={say.new}>
        {incident.error === null ? <Loading /> : <ErrorState error={incident.error} again={incident.again} />}
      </Page>
    );
  }
  const first = incident.data;
  return (
    <Page title={say.new} lead={say.newLead}>
      <NewRequest
        first={
          first === undefined ? [] : [{ id: first.id, reference: first.reference, hold: 'yes', reason: '' }]
        }
      />
    </Page>
  );
}

function NewRequest({ first }: { first: readonly ChosenIncident[] }) {
  const zone = ownZone();
  const [, go] = useLocation();
  const { me } = useSession();
  const people = useAskAll<AccountLine>('/api/accounts').data ?? [];
  const [draft, setDraft] = useState(() => emptyRequest(me?.name ?? '', first));
  const [key] = useState(() => crypto.randomUUID());
  const form = useRef<HTMLFormElement>(null);
  const { tell, pending, error } = useTell();
  const kind = textOf(draft, 'kind') as RequestKind | '';
  const holds = kind !== '' && callsForHold(kind);
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (pending) return;
    const body = { ...detailsBody(draft, zone), incidents: incidentsBody(draft) };
    const made = await tell<RequestView>('/api/requests', { method: 'POST', body, key }, [
      '/api/requests',
      '/api/incidents',
      '/api/tasks',
    ]);
    if (made !== undefined) go(`/requests/${made.id}`);
    else form.current?.querySelector<HTMLElement>('.thing-trouble')?.focus();
  };
  return (
    <form class="form request-form" ref={form} onSubmit={(event) => void submit(event)} noValidate>
      <p class="quiet">{say.newDraftLead}</p>
      <RequestFields
        draft={draft}
        onChange={(next) => setDraft(holdsFollow(draft, next))}
        error={error}
        zone={zone}
        people={people.filter(({ active, role }) => active && role !== 'counsel')}
      />
      <Section title={say.form.concerns}>
        <IncidentsField
          chosen={draft.incidents}
          onChange={(incidents) => setDraft({ ...draft, incidents })}
          holds={holds}
          faultAt={(place, member) => error?.faultAt(`/incidents/${place}/${member}`) ?? null}
        />
      </Section>
      <div class="thing-trouble" tabIndex={-1}>
        {error !== null && <RequestFaults error={error} />}
      </div>
      <Button type="submit" look="main" busy={pending}>
        {say.form.log}
      </Button>
    </form>
  );
}

type Draft = ReturnType<typeof emptyRequest>;

/** Whether a hold begins is what the kind of the paper calls for, until a person says otherwise after choosing it. */
function holdsFollow(before: Draft, after: Draft): Draft {
  const kind = textOf(after, 'kind');
  if (kind === textOf(before, 'kind') || kind === '') return after;
  const hold = callsForHold(kind as RequestKind) ? 'yes' : 'no';
  return { ...after, incidents: after.incidents.map((one) => ({ ...one, hold, reason: '' })) };
}
