import { Link, useSearch } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { Section } from '../look/section.js';
import { useSession } from '../session/session.js';
import { handOver as say } from '../words/hand-over.js';
import type { IncidentAnswer, NoticesAnswer, PacketsAnswer } from './hand-over-answers.js';
import './hand-over.css';
import { MakePacket } from './make-packet.js';
import { NoticesSection } from './notices-section.js';
import { PacketList } from './packet-list.js';

/** What leaves the house about an incident: first notices, packets to be made, and packets that were made. */
export default function HandOverPage({ params: { id = '' } }: PageProps) {
  // A request that is answered says in the address what the packet is for.
  const purpose = new URLSearchParams(useSearch()).get('purpose') ?? '';
  const path = `/api/incidents/${id}`;
  const incident = useAsk<IncidentAnswer>(path);
  const packets = useAsk<PacketsAnswer>(`${path}/packets`);
  const notices = useAsk<NoticesAnswer>(`${path}/first-notices`);
  const { me } = useSession();
  const makes = me?.role === 'manager' || me?.role === 'administrator';
  const error = incident.error ?? packets.error ?? notices.error;
  const title = incident.data === undefined ? say.titleWithout : say.title(incident.data.reference);
  const again = (): void => {
    for (const asked of [incident, packets, notices]) asked.again();
  };
  if (packets.data === undefined || notices.data === undefined || incident.data === undefined) {
    return (
      <Page title={title}>{error === null ? <Loading /> : <ErrorState error={error} again={again} />}</Page>
    );
  }
  return (
    <Page title={title} lead={say.lead}>
      {error !== null && <ErrorState error={error} again={again} />}
      <p class="links-line unprinted">
        <Link href={`/incidents/${id}`}>{say.toIncident}</Link>
        <Link href="/check">{say.checkLink}</Link>
      </p>
      <Section title={say.make}>
        {makes ? <MakePacket id={id} purpose={purpose} /> : <p>{say.forManagers}</p>}
      </Section>
      <Section title={say.packets}>
        <PacketList id={id} packets={packets.data.items} makes={makes} isCounsel={me?.role === 'counsel'} />
      </Section>
      <Section title={say.notices}>
        <NoticesSection id={id} answer={notices.data} makes={makes} />
      </Section>
    </Page>
  );
}
