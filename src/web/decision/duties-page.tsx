import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { Empty, ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as say } from '../words/decision.js';
import './decision.css';
import { DutiesSheet } from './duties-sheet.js';
import { EarliestClock } from './earliest-clock.js';
import { PrintButton } from '../look/print-button.js';
import { useMatter } from './use-matter.js';

/** The duties of an incident: what the law calls for, what would settle it, and what is signed and done about it. */
export default function DutiesPage({ params: { id = '' } }: PageProps) {
  const { matter, undetermined, reference, error, keptAt, again } = useMatter(id);
  const title = reference === undefined ? say.titleWithout : say.title(reference);
  if (undetermined) {
    return (
      <Page title={title}>
        <Empty>
          <p>{say.nothingYet.text}</p>
          <p>
            <Link href={`/incidents/${id}`}>{say.nothingYet.link}</Link>
          </p>
        </Empty>
      </Page>
    );
  }
  if (matter === undefined) {
    return (
      <Page title={title}>{error === null ? <Loading /> : <ErrorState error={error} again={again} />}</Page>
    );
  }
  const { madeAt, version, determination } = matter.determined;
  const { timeZone } = determination;
  return (
    <Page
      title={title}
      lead={
        <>
          <p>
            {say.asOf(tellInstant(madeAt, timeZone), version)} {say.zone(timeZone)}
          </p>
          <p>
            <strong>{say.caution}</strong>
          </p>
        </>
      }
      figure={<EarliestClock duties={matter.duties} zone={timeZone} />}
    >
      <PrintedBy timeZone={timeZone} />
      <KeptNote keptAt={keptAt} />
      {keptAt === null && error !== null && <ErrorState error={error} again={again} />}
      <p class="links-line unprinted">
        <Link href={`/incidents/${id}`}>{say.toIncident}</Link>
        <PrintButton />
      </p>
      <DutiesSheet matter={matter} />
    </Page>
  );
}
