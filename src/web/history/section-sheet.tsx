import { Link } from 'wouter-preact';
import { fieldLabel, sectionTitle } from '../../../shared/record/field-words/tell-field.js';
import { isJsonObject, type JsonObject, type JsonValue } from '../../../shared/record/json-value.js';
import { DefinitionRows, type Row, Section } from '../look/section.js';
import { tellHowKnown } from '../look/tell-recorded.js';
import { wholeRecord as say } from '../words/history.js';
import { language } from '../words/speak.js';
import type { PastSectionAnswer } from './history-answers.js';
import { inOrder } from './in-order.js';
import { nameOf, tellPath } from './tell-path.js';
import { tellThing } from './tell-thing.js';

interface SectionSheetProps {
  readonly incident: string;
  readonly section: PastSectionAnswer;
  /** All of them, for the names of things. */
  readonly sections: readonly PastSectionAnswer[];
  readonly timeZone: string;
}

/** A section with everything that stands in it, each fact with how it is known. */
export function SectionSheet({ incident, section: answer, sections, timeZone }: SectionSheetProps) {
  const { section, document, version, finished, withdrawn = [] } = answer;
  const title = sectionTitle(section, language());
  return (
    <Section
      title={title}
      aside={
        <p class="links-line unprinted">
          <Link href={`/incidents/${incident}/history?section=${section}`} aria-label={say.historyOf(title)}>
            {say.toHistory}
          </Link>
        </p>
      }
    >
      <p class="quiet">{say.state(version, finished)}</p>
      {withdrawn.length > 0 && (
        <p>{say.withdrawn(withdrawn.map((path) => tellPath(section, path, document)).join('; '))}</p>
      )}
      <div class="record-sheet">
        <Members section={section} sections={sections} object={document} path="" timeZone={timeZone} />
      </div>
    </Section>
  );
}

interface PlaceProps {
  readonly section: string;
  readonly sections: readonly PastSectionAnswer[];
  readonly path: string;
  readonly timeZone: string;
}

/** The fields of an object, and its lists and parts below them. */
function Members({ object, ...place }: PlaceProps & { object: JsonObject }) {
  const all = Object.entries(object)
    .filter(([name]) => name !== 'id')
    .map(([name, value]) => ({ value, place: { ...place, path: `${place.path}/${name}` } }));
  const members = inOrder(place.section, all, (member) => member.place.path);
  return (
    <>
      <DefinitionRows rows={members.flatMap((member) => rowOf(member))} />
      {members.map(({ value, place: below }) =>
        isList(value) ? (
          <Things key={below.path} things={value} {...below} />
        ) : isPart(value) ? (
          <div class="record-part" key={below.path}>
            <h3>{labelOf(below)}</h3>
            <Members object={value} {...below} />
          </div>
        ) : null,
      )}
    </>
  );
}

function rowOf({ value, place }: { value: JsonValue; place: PlaceProps }): Row[] {
  if (isList(value) || isPart(value)) return [];
  const about = tellHowKnown(value, place.timeZone);
  return [
    {
      term: labelOf(place),
      value: tellThing(value, place, place.sections),
      ...(about !== undefined && { about }),
    },
  ];
}

function Things({ things, ...place }: PlaceProps & { things: readonly Thing[] }) {
  const what = labelOf({ ...place, path: `${place.path}/*` });
  return (
    <>
      {things.map((thing, number) => (
        <div class="record-part" key={thing.id}>
          <h3>
            {what}: {nameOf(thing) ?? say.item(number + 1)}
          </h3>
          <Members object={thing} {...place} path={`${place.path}/${thing.id}`} />
        </div>
      ))}
    </>
  );
}

type Thing = JsonObject & { readonly id: string };

function isList(value: JsonValue): value is readonly Thing[] {
  return (
    Array.isArray(value) &&
    value.length > 0 &&
    value.every((one: JsonValue) => isJsonObject(one) && typeof one['id'] === 'string')
  );
}

/** A part of a document; a fact with how it is known, and a time with how it was taken, are told as one. */
function isPart(value: JsonValue): value is JsonObject {
  return isJsonObject(value) && !('known' in value) && !('how' in value);
}

function labelOf({ section, path }: Pick<PlaceProps, 'section' | 'path'>): string {
  return fieldLabel(section, path, language()) ?? path.slice(path.lastIndexOf('/') + 1);
}
