import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { Fold } from '../look/fold.js';
import { PrintButton } from '../look/print-button.js';
import { StorageNote } from '../device/storage-note.js';
import { CautionStrip } from '../look/caution-strip.js';
import { Deadline } from '../look/deadline.js';
import { ErrorState, KeptNote, Loading } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { tellClock } from '../look/tell-instant.js';
import { useSession } from '../session/session.js';
import { notBack as say } from '../words/not-back.js';
import { BecomeIncident } from './become-incident.js';
import { Ending } from './ending.js';
import { Ladder } from './ladder.js';
import { NightLimitSection } from './night-limit.js';
import { useArrivals } from './outing-queue.js';
import './outing.css';
import { ReadSheet, SearchSheet } from './search-sheet.js';
import { SheetForm } from './sheet-form.js';
import { useStandingInstead } from './standing-instead.js';
import { useNotBack } from './use-not-back.js';
import { WaitingNotes } from './waiting-notes.js';

/** A craft that is not back: whom to call, what to tell them, and how it ended. */
export default function NotBackPage({ params: { id = '' } }: PageProps) {
  const { me } = useSession();
  const { here, error, loading, keptAt, again } = useNotBack(id);
  useArrivals();
  useStandingInstead(id, (standing) => `/out-and-back/not-back/${standing}`);
  if (here === undefined) {
    return (
      <Page title={say.titleWithout} strip={<CautionStrip />}>
        {loading ? (
          <Loading />
        ) : error === null ? (
          <p>{say.unknownHere.text}</p>
        ) : (
          <ErrorState error={error} again={again} />
        )}
        <ToList />
      </Page>
    );
  }
  const { view, known, zone } = here;
  const dueBackAt = view?.outing?.dueBackAt ?? here.listed?.dueBackAt ?? null;
  const opened = tellClock(known.openedAt, zone);
  return (
    <Page
      title={say.title(known.unit)}
      strip={<CautionStrip />}
      lead={
        <>
          <p>
            {view === undefined ? say.openedAlone(opened) : say.opened(opened, view.openedBy)}{' '}
            {say.zone(zone)}
          </p>
          {me === null && <p>{say.deviceLead}</p>}
        </>
      }
      {...(dueBackAt !== null &&
        known.ended === null && { figure: <Deadline at={dueBackAt} timeZone={zone} first /> })}
      actions={
        <>
          <BecomeIncident known={known} />
          {me !== null && <ReadSheet here={here} />}
        </>
      }
    >
      <PrintedBy timeZone={zone} />
      <KeptNote keptAt={keptAt} />
      {keptAt === null && error !== null && <ErrorState error={error} again={again} />}
      <WaitingNotes line={id} />
      {known.ended === null && <p class="unprinted">{say.incident.lead}</p>}
      <div class="search-columns">
        <Ladder here={here} ended={known.ended !== null} />
        <div class="search-part">
          <NightLimitSection here={here} />
          {me !== null && <SearchSheet here={here} />}
          {view !== undefined && <Fold title={say.sheet.write}>{() => <SheetForm view={view} />}</Fold>}
        </div>
      </div>
      <Ending view={view} />
      <ToList print={me !== null} />
      <StorageNote />
    </Page>
  );
}

function ToList({ print = false }: { print?: boolean }) {
  return (
    <p class="links-line unprinted">
      <Link href="/out-and-back">{say.toList}</Link>
      {print && <PrintButton />}
    </p>
  );
}
