import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { ErrorState, KeptNote, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintButton } from '../look/print-button.js';
import { PrintedBy } from '../look/printed-by.js';
import { Section } from '../look/section.js';
import { ownZone, tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { shiftHandOver as say } from '../words/shift-hand-over.js';
import { HAND_OVERS, type HandOverAnswer } from './hand-over-answer.js';
import { Signatures } from './signatures.js';
import { SummarySections } from './summary-sections.js';

const HOUR_MS = 3_600_000;

/** One hand-over as it was gathered, to be read, signed by both shifts, and printed. */
export function HandOverSheet({ id }: { id: string }) {
  const now = useNow();
  const { data, error, keptAt, again } = useAsk<HandOverAnswer>(`${HAND_OVERS}/${id}`, { keep: true });
  if (data === undefined) {
    return (
      <Page title={say.title}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const { summary, remarks, builtBy, incomingName } = data;
  const zone = ownZone();
  const asOf = tellInstant(summary.asOf, zone, now);
  const isOld = incomingName === null && now - Date.parse(summary.asOf) > HOUR_MS;
  return (
    <Page title={say.titleOf(asOf)} lead={<p>{say.asOf(asOf, builtBy)}</p>}>
      <PrintedBy />
      <KeptNote keptAt={keptAt} />
      {isOld && <Note>{say.isOld}</Note>}
      <p class="links-line unprinted">
        <Link href="/shift-hand-over">{say.toList}</Link>
        <PrintButton />
      </p>
      <SummarySections summary={summary} zone={zone} />
      <Section title={say.remarks}>
        <p class="remarks">{remarks ?? say.remarksNone}</p>
      </Section>
      <Signatures handOver={data} zone={zone} />
    </Page>
  );
}
