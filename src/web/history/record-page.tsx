import './history.css';
import { Link, useSearch } from 'wouter-preact';
import { SECTION_NAMES } from '../../../shared/record/incident-record.js';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import { Empty, ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintButton } from '../look/print-button.js';
import { PrintedBy } from '../look/printed-by.js';
import { ownZone, tellInstant } from '../look/tell-instant.js';
import { nowByService } from '../look/use-now.js';
import { zoneOf } from '../officer/read-record.js';
import { history as sayHistory, wholeRecord as say } from '../words/history.js';
import { DeterminedThen } from './determined-then.js';
import { HeldThen } from './held-then.js';
import { KeptThen } from './kept-then.js';
import type { RecordAnswer } from './history-answers.js';
import { MomentForm } from './moment-form.js';
import { SectionSheet } from './section-sheet.js';

/** Everything that the record says, as it stands or as it stood at a moment, for reading and for paper. */
export default function RecordPage({ params: { id = '' } }: PageProps) {
  const at = new URLSearchParams(useSearch()).get('at');
  const query = at === null ? '' : `?at=${encodeURIComponent(at)}`;
  const path = `/api/incidents/${id}/record${query}`;
  const { data, error, keptAt, again } = useAsk<RecordAnswer>(path, { keep: true });
  if (data === undefined) {
    return (
      <Page title={say.titleWithout}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
        {at !== null && (
          <p class="links-line">
            <Link href={`/incidents/${id}/record`}>{say.showNow}</Link>
          </p>
        )}
      </Page>
    );
  }
  const timeZone = zoneOf(data) ?? ownZone();
  const time = tellInstant(at ?? keptAt ?? new Date(nowByService()).toISOString(), timeZone);
  const shown = ['incident', ...SECTION_NAMES].flatMap((name) =>
    data.sections.filter(({ section }) => section === name),
  );
  return (
    <Page
      title={say.title(data.reference)}
      lead={`${at === null ? say.now(time) : say.asOf(time)} ${say.version(data.version)}`}
    >
      <PrintedBy timeZone={timeZone} />
      <KeptNote keptAt={keptAt} />
      <p class="links-line unprinted">
        <Link href={`/incidents/${id}`}>{sayHistory.toIncident}</Link>
        <Link href={`/incidents/${id}/history`}>{say.toHistory}</Link>
        <PrintButton />
      </p>
      <MomentForm key={at ?? 'now'} incident={id} at={at} timeZone={timeZone} />
      {shown.length === 0 && (
        <Empty>
          <p>{say.none}</p>
        </Empty>
      )}
      {shown.map((section) => (
        <SectionSheet
          key={section.section}
          incident={id}
          section={section}
          sections={data.sections}
          timeZone={timeZone}
        />
      ))}
      <DeterminedThen incident={id} query={query} timeZone={timeZone} />
      <KeptThen incident={id} query={query} timeZone={timeZone} />
      <HeldThen incident={id} query={query} timeZone={timeZone} />
    </Page>
  );
}
