import './history.css';
import { Link, useLocation, useSearch } from 'wouter-preact';
import { sectionTitle } from '../../../shared/record/field-words/tell-field.js';
import { SECTION_NAMES } from '../../../shared/record/incident-record.js';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import { ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintButton } from '../look/print-button.js';
import { PrintedBy } from '../look/printed-by.js';
import { Select } from '../look/select.js';
import { zoneOf } from '../officer/read-record.js';
import { history as say } from '../words/history.js';
import { language } from '../words/speak.js';
import { Amendments, documentIn } from './amendments.js';
import type { RecordAnswer } from './history-answers.js';
import { tellPath } from './tell-path.js';

const SECTIONS = [...SECTION_NAMES, 'incident'] as const;

/** Who changed what in the record, when and why: all of it, one section, or one field. */
export default function HistoryPage({ params: { id = '' } }: PageProps) {
  const [, go] = useLocation();
  const search = new URLSearchParams(useSearch());
  const section = SECTIONS.find((one) => one === search.get('section')) ?? null;
  const pointer = section === null ? null : search.get('pointer');
  const { data, error, keptAt, again } = useAsk<RecordAnswer>(`/api/incidents/${id}/record`, { keep: true });
  if (data === undefined) {
    return (
      <Page title={say.titleWithout}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const timeZone = zoneOf(data);
  const query = new URLSearchParams({
    limit: '50',
    ...(section !== null && { section }),
    ...(pointer !== null && { pointer }),
  });
  const address = `/incidents/${id}/history`;
  return (
    <Page title={say.title(data.reference)} lead={say.lead}>
      <PrintedBy {...(timeZone !== undefined && { timeZone })} />
      <KeptNote keptAt={keptAt} />
      <p class="links-line unprinted">
        <Link href={`/incidents/${id}`}>{say.toIncident}</Link>
        <Link href={`/incidents/${id}/record`}>{say.toRecord}</Link>
        <PrintButton />
      </p>
      <div class="form unprinted">
        <Select
          label={say.section}
          value={section ?? ''}
          onChoose={(chosen) => go(chosen === '' ? address : `${address}?section=${chosen}`)}
          none={say.allSections}
          optional
          groups={[{ options: SECTIONS.map((value) => ({ value, label: sectionTitle(value, language()) })) }]}
        />
      </div>
      {section !== null && pointer !== null && (
        <p class="links-line">
          <strong>{say.field(tellPath(section, pointer, documentIn(data, section)))}</strong>
          <Link class="unprinted" href={`${address}?section=${section}`}>
            {say.wholeSection}
          </Link>
        </p>
      )}
      <ol class="amendments">
        <Amendments key={query.toString()} record={data} query={query.toString()} timeZone={timeZone} />
      </ol>
    </Page>
  );
}
