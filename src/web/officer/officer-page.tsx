import './officer.css';
import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { tellInstant } from '../look/tell-instant.js';
import { officer as say } from '../words/officer.js';
import { GivenToOfficers } from './given-to-officers.js';
import { GiveOfficer } from './give-officer.js';
import { OfficerSheetView } from './officer-sheet-view.js';
import { OwnerForm } from './owner-form.js';
import { SheetActions } from './sheet-actions.js';
import { useWholeRecord } from './use-whole-record.js';

/** What an officer asks at the scene, on the screen or on paper, and the note that it was given. */
export default function OfficerPage({ params: { id = '' } }: PageProps) {
  const { whole, error, keptAt, again } = useWholeRecord(id);
  if (whole === undefined) {
    return (
      <Page title={say.titleWithout}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const { record, timeZone, asOf } = whole;
  return (
    <Page
      title={say.title(record.reference)}
      lead={
        <>
          <p>
            {say.lead(tellInstant(asOf, timeZone), record.version)}{' '}
            {timeZone !== undefined && say.zone(timeZone)}
          </p>
          <p class="unprinted">
            {say.about} {say.left}
          </p>
        </>
      }
      actions={<SheetActions />}
    >
      <KeptNote keptAt={keptAt} />
      <OwnerForm whole={whole} />
      <OfficerSheetView whole={whole} />
      <p class="links-line unprinted">
        <Link href={`/incidents/${id}/other-operator`}>{say.toOther}</Link>
        <Link href="/what-to-say">{say.toSay}</Link>
      </p>
      <GiveOfficer whole={whole} />
      <GivenToOfficers whole={whole} />
    </Page>
  );
}
