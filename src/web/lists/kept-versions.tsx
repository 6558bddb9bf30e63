import { useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { ErrorState, Loading, Note } from '../look/notes.js';
import { DefinitionRows, Section } from '../look/section.js';
import { dayIn, tellInstant } from '../look/tell-instant.js';
import { lists as say } from '../words/lists.js';
import type { FieldSpec, Thing } from './field-spec.js';
import { tellDay } from './tell-day.js';
import { told, toldDifferences } from './told.js';
import { usePages } from './use-pages.js';

interface KeptVersion {
  readonly version: number;
  readonly details: Thing;
  readonly person: string;
  readonly recordedAt: string;
}

/** Every version of a thing, with what it was on a day: incidents are read against that. */
export function KeptVersions({ path, specs }: { path: string; specs: readonly FieldSpec[] }) {
  const { data, error, again, more } = usePages<KeptVersion>(`${path}/versions`);
  const [day, setDay] = useState('');
  if (data === undefined) return error === null ? <Loading /> : <ErrorState error={error} again={again} />;
  const { items } = data;
  return (
    <Section title={say.versions.title}>
      <p class="quiet">{say.versions.lead}</p>
      <Field label={say.versions.day} type="date" value={day} onInput={setDay} max={dayIn()} />
      {day !== '' && <OnDay day={day} versions={items} specs={specs} whole={more === undefined} />}
      <h3>{say.versions.changes}</h3>
      <ol class="log">
        {items.map((version, place) => (
          <li key={version.version}>
            <p class="quiet">{asOf(version)}</p>
            <Changes version={version} before={items[place + 1]} specs={specs} />
          </li>
        ))}
      </ol>
      {more !== undefined && <Button onPress={more}>{say.more}</Button>}
    </Section>
  );
}

const asOf = ({ version, recordedAt, person }: KeptVersion): string =>
  say.versions.asOf(version, tellInstant(recordedAt), person);

interface OnDayProps {
  readonly day: string;
  readonly versions: readonly KeptVersion[];
  readonly specs: readonly FieldSpec[];
  /** Every version is here: an earlier day has none. */
  readonly whole: boolean;
}

/** The last version that was entered by the end of the day, in the zone of this device. */
function OnDay({ day, versions, specs, whole }: OnDayProps) {
  const stood = versions.find(({ recordedAt }) => dayIn(undefined, Date.parse(recordedAt)) <= day);
  if (stood === undefined)
    return whole ? <Note>{say.versions.none(tellDay(day))}</Note> : <Note>{say.more}</Note>;
  return (
    <div class="on-day" role="group" aria-label={`${say.versions.day} ${tellDay(day)}`}>
      <p class="quiet">{asOf(stood)}</p>
      <DefinitionRows
        rows={specs.flatMap((spec) => {
          const value = told(spec, stood.details);
          return value === null ? [] : [{ term: spec.label, value }];
        })}
      />
    </div>
  );
}

function Changes({
  version,
  before,
  specs,
}: {
  version: KeptVersion;
  before: KeptVersion | undefined;
  specs: readonly FieldSpec[];
}) {
  if (version.version === 1) return <p>{say.versions.first}</p>;
  if (before === undefined) return null;
  return (
    <ul class="faults">
      {toldDifferences(specs, before.details, version.details).map(({ spec, was, is }) => (
        <li key={spec.name}>{say.versions.from(spec.label, was ?? say.nothing, is ?? say.nothing)}</li>
      ))}
    </ul>
  );
}
