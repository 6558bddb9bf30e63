import type { JsonObject, JsonValue } from '../../../shared/record/json-value.js';
import { isJsonObject } from '../../../shared/record/json-value.js';
import { tellHowKnown, tellRecorded } from '../look/tell-recorded.js';
import { DefinitionRows, type Row } from '../look/section.js';
import { overview as say } from '../words/overview.js';
import { documentOf, type IncidentAnswer, type RecordAnswer } from './record-answers.js';

/** What happened, when, where, to whom and with what, each in a line with how it is known. */
export function KnownRows({ incident, record }: { incident: IncidentAnswer; record: RecordAnswer }) {
  const place = documentOf(record, 'time-and-place');
  const account = documentOf(record, 'account');
  const timeZone = zoneOf(record);
  const row = (
    term: string,
    section: string,
    [name, value]: readonly [string, JsonValue | undefined],
    instead?: string,
  ): Row => {
    const told = tellRecorded(value, { section, path: `/${name}`, timeZone });
    const about = tellHowKnown(value, timeZone);
    return {
      term,
      value: told === '' ? (instead ?? <span class="quiet">{say.notSaid}</span>) : told,
      ...(about !== undefined && { about }),
    };
  };
  const where = ['description', 'waterBody', 'nearestTown', 'position'].find((name) => name in place) ?? '';
  return (
    <DefinitionRows
      rows={[
        row(say.what, 'account', ['casualtyTypes', account['casualtyTypes']], incident.summary.said),
        row(say.when, 'time-and-place', ['occurred', place['occurred']]),
        row(say.where, 'time-and-place', [where, place[where]], incident.summary.where),
        { term: say.craft, value: incident.summary.craft?.join(', ') ?? notSaid() },
        { term: say.people, value: tellPeople(record) ?? notSaid() },
      ]}
    />
  );
}

const notSaid = () => <span class="quiet">{say.notSaid}</span>;

/** Each person with what became of them. */
function tellPeople(record: RecordAnswer) {
  const { people } = documentOf(record, 'people');
  if (!Array.isArray(people) || people.length === 0) return null;
  return (
    <ul class="people-in-short">
      {(people as readonly (JsonObject & { id: string })[]).map((person) => (
        <li key={person.id}>{tellPerson(person)}</li>
      ))}
    </ul>
  );
}

function tellPerson(person: JsonObject): string {
  const of = (name: string): string =>
    tellRecorded(person[name], { section: 'people', path: `/people/x/${name}` });
  const parts = [of('role'), of('outcome')].filter((part) => part !== '');
  return [of('name') || say.person, parts.join(', ')].filter((part) => part !== '').join(': ');
}

/** The zone of the place, as far as anybody has said it. */
export function zoneOf(record: RecordAnswer | undefined): string | undefined {
  const zone = documentOf(record, 'time-and-place')['timeZone'];
  return isJsonObject(zone) && typeof zone['value'] === 'string' ? zone['value'] : undefined;
}
