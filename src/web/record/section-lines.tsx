import { Link } from 'wouter-preact';
import type { SectionName } from '../../../shared/record/incident-record.js';
import { sectionTitle } from '../../../shared/record/field-words/tell-field.js';
import { useStore } from '../app/store.js';
import { useOutbox, writerNow } from '../device/outbox.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { overview as say } from '../words/overview.js';
import { language } from '../words/speak.js';
import { WRITTEN_SECTIONS } from './asked-first.js';
import { drafts } from './draft-store.js';
import { type GroupedLack, groupLacks } from './group-lacks.js';
import type { AmendmentsAnswer, LacksAnswer, RecordAnswer } from './record-answers.js';
import { isUnsaved } from './section-draft.js';

interface SectionLinesProps {
  readonly id: string;
  readonly record: RecordAnswer;
  readonly lacks: LacksAnswer | undefined;
  readonly amendments: AmendmentsAnswer | undefined;
  readonly timeZone: string | undefined;
}

/** Each section with how far it has come, who wrote last, and what the official report still lacks of it. */
export function SectionLines(props: SectionLinesProps) {
  return (
    <ul class="section-lines">
      {WRITTEN_SECTIONS.map((section) => (
        <SectionLine key={section} section={section} {...props} />
      ))}
    </ul>
  );
}

function SectionLine({
  id,
  section,
  record,
  lacks,
  amendments,
  timeZone,
}: SectionLinesProps & { section: SectionName }) {
  const waiting = useOutbox(id).some(
    (item) => item.kind === 'request' && item.path.includes(`/sections/${section}`),
  );
  const unsaved = useStore(drafts).some(
    (draft) =>
      draft.incident === id && draft.section === section && draft.by === writerNow() && isUnsaved(draft),
  );
  const written = record.sections.find((one) => one.section === section);
  const last = amendments?.items.find((one) => one.section === section);
  const state = written === undefined ? 'none' : written.finished ? 'finished' : 'begun';
  const lacking = groupLacks(lacks?.items.find((one) => one.section === section) ?? { section, lacks: [] });
  const address = `/incidents/${id}/record/${section}`;
  return (
    <li>
      <h3>
        <Link href={address}>{sectionTitle(section, language())}</Link>
      </h3>
      <p class="section-state">
        {say.version[state]}
        {last !== undefined && (
          <span class="quiet">
            {' · '}
            {say.by(last.person || say.aDevice, tellInstant(last.madeAt, timeZone))}
          </span>
        )}
      </p>
      {(waiting || unsaved) && <p class="section-here">{waiting ? say.onlyHere : say.writing}</p>}
      {lacking.length > 0 && <Lacking address={address} lacking={lacking} />}
    </li>
  );
}

function Lacking({ address, lacking }: { address: string; lacking: readonly GroupedLack[] }) {
  return (
    <details>
      <summary>{say.lacks(lacking.length)}</summary>
      <ul class="lacks">
        {lacking.map(({ path, words, state, citations }) => (
          <li key={`${path} ${words}`}>
            <Sign of={state === 'missing' ? 'no' : 'unknown'} />
            <Link href={`${address}?at=${encodeURIComponent(path)}`}>{words}</Link>
            <span class="quiet">
              {' '}
              {say.lackState[state]} · {citations.join(', ')}
            </span>
          </li>
        ))}
      </ul>
    </details>
  );
}
