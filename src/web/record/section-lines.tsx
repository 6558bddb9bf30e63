import { Link } from 'wouter-preact';
import type { SectionName } from '../../../shared/record/incident-record.js';
import { sectionTitle } from '../../../shared/record/field-words/tell-field.js';
import { useOutbox } from '../device/outbox.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { overview as say } from '../words/overview.js';
import { language } from '../words/speak.js';
import { WRITTEN_SECTIONS } from './asked-first.js';
import { type GroupedLack, groupLacks } from './group-lacks.js';
import type { AmendmentsAnswer, LacksAnswer, RecordAnswer } from './record-answers.js';

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
  const written = record.sections.find((one) => one.section === section);
  const last = amendments?.items.find((one) => one.section === section);
  const state = written === undefined ? 'none' : written.finished ? 'finished' : 'begun';
  const lacking = lacks?.items.find((one) => one.section === section)?.lacks ?? [];
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
      {waiting && <p class="section-here">{say.onlyHere}</p>}
      {lacking.length > 0 && <Lacking address={address} lacking={groupLacks(lacking)} />}
    </li>
  );
}

function Lacking({ address, lacking }: { address: string; lacking: readonly GroupedLack[] }) {
  return (
    <details>
      <summary>{say.lacks(lacking.length)}</summary>
      <ul class="lacks">
        {lacking.map(({ path, label, subject, state, citations }) => (
          <li key={`${path} ${label} ${subject ?? ''}`}>
            <Sign of={state === 'missing' ? 'no' : 'unknown'} />
            <Link href={`${address}?at=${encodeURIComponent(path)}`}>
              {subject === null ? label : `${subject}: ${label}`}
            </Link>
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
