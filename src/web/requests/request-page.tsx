import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import '../lists/lists.css';
import { Deadline } from '../look/deadline.js';
import { Fold } from '../look/fold.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { Section } from '../look/section.js';
import { ownZone, tellInstant } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { requests as say } from '../words/requests.js';
import { AnswersPart } from './answers-part.js';
import { Cautions } from './cautions.js';
import { ConcernedPart } from './concerned-part.js';
import { CorrectForm } from './correct-form.js';
import type { RequestView } from './request-answers.js';
import { RequestDetailsRows } from './request-rows.js';
import './requests.css';
import { StatusPart } from './status-part.js';
import { VersionsPart } from './versions-part.js';

/** One request: what it asks and by when, which incidents are held, and what was done. */
export default function RequestPage({ params: { id = '' } }: PageProps) {
  const { data: request, error, again } = useAsk<RequestView>(`/api/requests/${id}`);
  const writes = useSession().me?.role !== 'counsel';
  if (request === undefined) {
    return (
      <Page title={say.title}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const { kind, number, dueInstant, objectionsBy, status, loggedAt, by } = request;
  const zone = request.timeZone ?? ownZone();
  const open = status === 'open' || status === 'in-part';
  const clocks = [
    ...(objectionsBy === null ? [] : [{ at: objectionsBy, note: say.page.objections }]),
    ...(dueInstant === null ? [] : [{ at: dueInstant, note: say.page.due }]),
  ].sort((one, other) => (one.at < other.at ? -1 : 1));
  return (
    <Page
      title={say.page.title(say.kinds[kind], number)}
      lead={say.page.logged(tellInstant(loggedAt), by.person)}
      {...(open && {
        figure: (
          <div>
            {clocks.map(({ at, note }, place) => (
              <Deadline key={note} at={at} timeZone={zone} note={note} first={place === 0} />
            ))}
            {dueInstant === null && <p>{say.page.dueUnknown}</p>}
          </div>
        ),
      })}
    >
      <PrintedBy />
      <p class="links-line unprinted">
        <Link href="/requests">{say.toList}</Link>
      </p>
      {error !== null && <ErrorState error={error} again={again} />}
      {open && <Cautions cautions={request.cautions} />}
      <StatusPart request={request} writes={writes} />
      <ConcernedPart request={request} writes={writes} />
      <Section title={say.page.details}>
        <RequestDetailsRows request={request} zone={zone} />
        {writes && (
          <Fold title={say.page.correct}>{() => <CorrectForm request={request} zone={zone} />}</Fold>
        )}
      </Section>
      <AnswersPart request={request} what="productions" writes={writes} />
      <AnswersPart request={request} what="objections" writes={writes} />
      {writes && <VersionsPart id={id} />}
    </Page>
  );
}
