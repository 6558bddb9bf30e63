import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { Section } from '../look/section.js';
import { ownZone, tellInstant } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { overview as say } from '../words/overview.js';
import { DutiesInShort } from './duties-in-short.js';
import { INCIDENT_PAGES } from './incident-pages.js';
import { KnownRows, zoneOf } from './known-rows.js';
import './record.css';
import { SectionLines } from './section-lines.js';
import { useRecord } from './use-record.js';

/** One incident at a glance: what is known, how the duties stand, and every section with what the report lacks of it. */
export default function OverviewPage({ params: { id = '' } }: PageProps) {
  const { incident, record, lacks, amendments, error, keptAt, again } = useRecord(id);
  const title = incident === undefined ? say.titleWithout : say.title(incident.reference);
  if (incident === undefined || record === undefined) {
    return (
      <Page title={title}>{error === null ? <Loading /> : <ErrorState error={error} again={again} />}</Page>
    );
  }
  const timeZone = zoneOf(record) ?? ownZone();
  return (
    <Page
      title={title}
      lead={`${say.status[incident.status]}, ${say.opened(tellInstant(incident.openedAt, timeZone))}`}
    >
      <PrintedBy timeZone={timeZone} />
      <KeptNote keptAt={keptAt} />
      {keptAt === null && error !== null && <ErrorState error={error} again={again} />}
      <div class="overview">
        <Section title={say.known}>
          <KnownRows incident={incident} record={record} />
        </Section>
        <Section title={say.duties}>
          <DutiesInShort id={id} zone={timeZone} />
        </Section>
        <Section title={say.sections}>
          <p class="quiet">{say.sectionsLead}</p>
          <SectionLines id={id} record={record} lacks={lacks} amendments={amendments} timeZone={timeZone} />
        </Section>
        <OtherPages id={id} />
      </div>
    </Page>
  );
}

function OtherPages({ id }: { id: string }) {
  const { me } = useSession();
  const pages = INCIDENT_PAGES.filter(({ who }) => me !== null && who.includes(me.role));
  if (pages.length === 0) return null;
  return (
    <Section title={say.pages}>
      <ul class="links">
        {pages.map(({ path, name }) => (
          <li key={path}>
            <Link href={`/incidents/${id}/${path}`}>{name}</Link>
          </li>
        ))}
      </ul>
    </Section>
  );
}
