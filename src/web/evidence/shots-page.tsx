import './evidence.css';
import { Link } from 'wouter-preact';
import type { PageProps } from '../app/page-route.js';
import { useAsk } from '../ask/use-ask.js';
import { useOutbox } from '../device/outbox.js';
import { StorageNote } from '../device/storage-note.js';
import { Empty, ErrorState, KeptNote, Loading, Note } from '../look/notes.js';
import { Page } from '../look/page.js';
import { PrintedBy } from '../look/printed-by.js';
import { useSession } from '../session/session.js';
import { useWholeRecord, type WholeRecord } from '../officer/use-whole-record.js';
import { evidence as say } from '../words/evidence.js';
import { CustodySection } from './custody-section.js';
import type { EvidenceAnswer } from './evidence-answers.js';
import { FilesSection } from './files-section.js';
import { OutsideSection } from './outside-section.js';
import { OtherCraftShots, ShotsOfCraft } from './shots-of-craft.js';
import { shotLists, takenShots } from './shot-lists.js';
import { useShots } from './use-shots.js';

/** The pictures to take of each craft, what has arrived, the things kept, and what others hold. */
export default function ShotsPage({ params: { id = '' } }: PageProps) {
  const { whole, error, keptAt, again } = useWholeRecord(id);
  const files = useAsk<EvidenceAnswer>(`/api/incidents/${id}/evidence`, { keep: true });
  if (whole === undefined) {
    return (
      <Page title={say.titleWithout}>
        {error === null ? <Loading /> : <ErrorState error={error} again={again} />}
      </Page>
    );
  }
  const { timeZone } = whole;
  return (
    <Page title={say.title(whole.record.reference)} lead={say.lead}>
      <PrintedBy {...(timeZone !== undefined && { timeZone })} />
      <KeptNote keptAt={keptAt} />
      <p class="links-line unprinted">
        <Link href={`/incidents/${id}`}>{say.toIncident}</Link>
      </p>
      <Lists whole={whole} files={files.data} />
      {files.data === undefined && files.error !== null && (
        <ErrorState error={files.error} again={files.again} />
      )}
      {files.data !== undefined && <FilesSection incident={id} answer={files.data} timeZone={timeZone} />}
      <CustodySection incident={id} timeZone={timeZone} />
      <OutsideSection incident={id} timeZone={timeZone} />
      <StorageNote />
    </Page>
  );
}

function Lists({ whole, files }: { whole: WholeRecord; files: EvidenceAnswer | undefined }) {
  const { record, sections, fleet } = whole;
  const waiting = useOutbox(record.id);
  const mayWrite = useSession().me?.role !== 'counsel';
  const shots = useShots(record.id);
  const taken = takenShots(files?.files ?? [], waiting);
  const lists = shotLists(sections, fleet, taken);
  const onlyHere = waiting.filter(({ kind }) => kind === 'file').length;
  return (
    <>
      {onlyHere > 0 && <Note kind="offline">{say.shots.waiting(onlyHere)}</Note>}
      {lists.length === 0 && (
        <Empty>
          <p>{say.noCraft}</p>
        </Empty>
      )}
      {lists.map((list) => (
        <ShotsOfCraft key={list.craft} list={list} shots={mayWrite ? shots : null} />
      ))}
      <OtherCraftShots taken={taken} shots={mayWrite ? shots : null} />
    </>
  );
}
