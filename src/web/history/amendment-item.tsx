import { Link } from 'wouter-preact';
import { sectionTitle } from '../../../shared/record/field-words/tell-field.js';
import type { JsonObject, JsonValue } from '../../../shared/record/json-value.js';
import { tellInstant } from '../look/tell-instant.js';
import { tellHowKnown } from '../look/tell-recorded.js';
import { history as say } from '../words/history.js';
import { language } from '../words/speak.js';
import type { AmendmentAnswer, ChangeAnswer, PastSectionAnswer } from './history-answers.js';
import { inOrder } from './in-order.js';
import { tellPath } from './tell-path.js';
import { tellThing } from './tell-thing.js';

interface AmendmentItemProps {
  readonly incident: string;
  readonly amendment: AmendmentAnswer;
  /** The record as it stands, for the names of what it speaks of. */
  readonly sections: readonly PastSectionAnswer[];
  readonly timeZone: string | undefined;
}

/** One change: who, when, why, and each field with what it said before and after. */
export function AmendmentItem({ incident, amendment, sections, timeZone }: AmendmentItemProps) {
  const { sequence, section, madeAt, person, reason, reasonWithdrawn, finished, withdraws } = amendment;
  const when = tellInstant(madeAt, timeZone);
  const document = sections.find((one) => one.section === section)?.document ?? {};
  const changes = inOrder(
    section,
    amendment.changes.filter((change) => !isBookkeeping(change)),
    ({ path }) => path,
  );
  return (
    <li class="amendment">
      <h2>{say.by(person || say.aDevice, when)}</h2>
      <p class="quiet">
        {sectionTitle(section, language())} · {say.number(sequence)}
      </p>
      {reason !== null && <p>{say.why(reason)}</p>}
      {reasonWithdrawn === true && <p>{say.reasonWithdrawn}</p>}
      {finished && <p>{say.finished}</p>}
      {withdraws.length > 0 && (
        <p>
          {say.withdrew}: {withdraws.map((path) => tellPath(section, path, document)).join('; ')}
        </p>
      )}
      {changes.length > 0 && (
        <dl class="changes">
          {changes.map((change) => (
            <Change key={change.path} {...{ incident, section, sections, change, document, timeZone }} />
          ))}
        </dl>
      )}
      <p class="links-line unprinted">
        <Link
          href={`/incidents/${incident}/record?at=${encodeURIComponent(madeAt)}`}
          aria-label={say.recordThenLabel(when)}
        >
          {say.recordThen}
        </Link>
      </p>
    </li>
  );
}

interface ChangeProps {
  readonly incident: string;
  readonly section: string;
  readonly sections: readonly PastSectionAnswer[];
  readonly change: ChangeAnswer;
  readonly document: JsonObject;
  readonly timeZone: string | undefined;
}

function Change({
  incident,
  section,
  sections,
  change: { path, from, to, withdrawn },
  document,
  timeZone,
}: ChangeProps) {
  const name = tellPath(section, path, document);
  const told = (value: JsonValue): string =>
    tellThing(value, { section, path, timeZone }, sections) ||
    (withdrawn === true ? say.withdrawnSince : say.nothing);
  const known = tellHowKnown(to, timeZone);
  const query = new URLSearchParams({ section, pointer: path });
  return (
    <div class="change">
      <dt>
        <Link href={`/incidents/${incident}/history?${query.toString()}`} aria-label={say.ofFieldLabel(name)}>
          {name}
        </Link>
      </dt>
      <dd>
        {(from !== null || withdrawn === true) && <p class="quiet">{say.was(told(from))}</p>}
        <strong>{told(to)}</strong>
        {known !== undefined && <span class="row-about">{known}</span>}
      </dd>
    </div>
  );
}

/** An id says nothing by itself, and a list of ids says only that a thing was added, whose fields stand beside it. */
function isBookkeeping({ path, from, to }: ChangeAnswer): boolean {
  return path.endsWith('/id') || (isIds(from) && isIds(to));
}

const ID = /^[\w-]*\d[\w-]*$/;

function isIds(value: JsonValue): boolean {
  if (value === null) return true;
  return Array.isArray(value) && value.every((id: JsonValue) => typeof id === 'string' && ID.test(id));
}
