import { useAsk } from '../ask/use-ask.js';
import { SignedHistory } from '../decision/signed-history.js';
import { Thing } from '../evidence/custody-section.js';
import type {
  CustodyAnswer,
  EvidenceAnswer,
  FileAnswer,
  OutsideAnswer,
} from '../evidence/evidence-answers.js';
import { OutsideItem } from '../evidence/outside-section.js';
import { Empty, ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { evidence as sayEvidence } from '../words/evidence.js';
import { wholeRecord as say } from '../words/history.js';

export interface KeptThenProps {
  readonly incident: string;
  /** `?at=` of the moment; empty for now. */
  readonly query: string;
  readonly timeZone: string;
}

/** What is kept beside the sections: files, things, what others hold, and what was signed. */
export function KeptThen({ incident, query, timeZone }: KeptThenProps) {
  const path = `/api/incidents/${incident}`;
  const files = useAsk<EvidenceAnswer>(`${path}/evidence${query}`, { keep: true });
  const things = useAsk<CustodyAnswer>(`${path}/custody${query}`, { keep: true });
  const outside = useAsk<OutsideAnswer>(`${path}/outside-evidence${query}`, { keep: true });
  const failed = [files, things, outside].find(({ error, data }) => error !== null && data === undefined);
  if (failed?.error) return <ErrorState error={failed.error} again={failed.again} />;
  if (!files.data || !things.data || !outside.data) return <Loading />;
  return (
    <>
      <Section title={say.files}>
        {files.data.files.length === 0 && (
          <Empty>
            <p>{say.noFiles}</p>
          </Empty>
        )}
        {files.data.restricted > 0 && <p>{sayEvidence.files.more(files.data.restricted)}</p>}
        <ul class="things">
          {files.data.files.map((file) => (
            <FileLine key={file.id} file={file} timeZone={timeZone} />
          ))}
        </ul>
      </Section>
      {things.data.items.length > 0 && (
        <Section title={sayEvidence.custody.title}>
          <ul class="things">
            {things.data.items.map((item) => (
              <Thing key={item.id} item={item} timeZone={timeZone} />
            ))}
          </ul>
        </Section>
      )}
      {outside.data.items.length > 0 && (
        <Section title={sayEvidence.outside.title}>
          <ul class="things">
            {outside.data.items.map((item) => (
              <OutsideItem key={item.id} item={item} timeZone={timeZone} />
            ))}
          </ul>
        </Section>
      )}
      <SignedHistory id={incident} zone={timeZone} query={query} />
    </>
  );
}

/** A file as paper can hold it: what it shows, from whom, and the hash by which it is recognised. */
function FileLine({ file, timeZone }: { file: FileAnswer; timeZone: string }) {
  const { about, name, kind, receivedAt, sha256, withdrawn } = file;
  return (
    <li>
      <strong>{about.caption ?? name ?? sayEvidence.files.unnamed}</strong>
      <p class="quiet">
        {sayEvidence.files.kinds[kind]}
        {about.takenBy !== undefined && `, ${sayEvidence.files.by(about.takenBy)}`},{' '}
        {sayEvidence.files.arrived(tellInstant(receivedAt, timeZone))}
      </p>
      <p>
        SHA-256 <code>{sha256}</code>
      </p>
      {withdrawn !== undefined && (
        <p>
          {sayEvidence.files.withdrawn(tellInstant(withdrawn.at, timeZone), withdrawn.by, withdrawn.reason)}
        </p>
      )}
    </li>
  );
}
