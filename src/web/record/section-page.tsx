import { useMemo, useState } from 'preact/hooks';
import { Link, useSearch } from 'wouter-preact';
import { sectionLead, sectionTitle } from '../../../shared/record/field-words/tell-field.js';
import { isSectionName } from '../../../shared/wire/record-sections.js';
import type { PageProps } from '../app/page-route.js';
import { ErrorState, KeptNote, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { ownZone } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { record as say } from '../words/record.js';
import { language } from '../words/speak.js';
import { isWritten, type WrittenSection } from './asked-first.js';
import { groupLacks } from './group-lacks.js';
import { zoneOf } from './known-rows.js';
import { LackList } from './lack-list.js';
import './record.css';
import { ReadSection } from './read-section.js';
import { SectionForm } from './section-form.js';
import { useSection } from './use-section.js';
import { WithdrawForm } from './withdraw-form.js';

/** One section of the record: read by counsel, written by everybody else, added to by a shared device. */
export default function SectionPage({ params: { id = '', section = '' } }: PageProps) {
  if (!isSectionName(section) || !isWritten(section)) {
    return (
      <Page title={say.noSuchSection}>
        <Link href={`/incidents/${id}`}>{say.toIncident}</Link>
      </Page>
    );
  }
  return <OneSection key={`${id}/${section}`} id={id} section={section} />;
}

function OneSection({ id, section }: { id: string; section: WrittenSection }) {
  const open = useSection(id, section);
  const { draft, blind, addsOnly, readOnly, record, lacks, error, keptAt, again } = open;
  const [sought, setSought] = useState(useSought());
  const lacking = useMemo(
    () => groupLacks(lacks?.items.find((one) => one.section === section) ?? { section, lacks: [] }),
    [lacks, section],
  );
  const { me } = useSession();
  const manages = me?.role === 'manager' || me?.role === 'administrator';
  const title = sectionTitle(section, language());
  if (draft === undefined) {
    return (
      <Page title={title}>{error === null ? <Loading /> : <ErrorState error={error} again={again} />}</Page>
    );
  }
  const timeZone = zoneOf(record) ?? ownZone();
  const reference = record?.reference;
  return (
    <Page title={title} lead={sectionLead(section, language())}>
      {!addsOnly && (
        <p class="links-line unprinted">
          <Link href={`/incidents/${id}`}>
            {say.toIncident} {reference}
          </Link>
        </p>
      )}
      <KeptNote keptAt={keptAt} />
      {blind && <Note kind="offline">{say.blind}</Note>}
      {addsOnly && <Note>{say.adds}</Note>}
      {error !== null && keptAt === null && <ErrorState error={error} again={again} />}
      <div class="section-sheet">
        {readOnly ? (
          <ReadSection draft={draft} timeZone={timeZone} />
        ) : (
          <SectionForm
            open={open}
            draft={draft}
            timeZone={timeZone}
            lacking={new Set(lacking.map(({ path }) => path))}
            sought={sought}
          />
        )}
        {!addsOnly && (
          <div class="section-aside">
            <LackList lacking={lacking} onSeek={readOnly ? undefined : (path) => setSought({ path })} />
            {manages && <WithdrawForm draft={draft} />}
          </div>
        )}
      </div>
    </Page>
  );
}

/** The field that the address names, as a list of what is lacking leads there. */
function useSought(): { path: string } | null {
  const path = new URLSearchParams(useSearch()).get('at');
  return path === null || path === '' ? null : { path };
}
