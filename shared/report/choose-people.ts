import { valueOf } from '../call/known.js';
import type { PersonOutcome } from '../record/incident-facts.js';
import type { IncidentRecord } from '../record/incident-record.js';
import { nameListed } from '../record/name-listed.js';
import type { PersonRecord } from '../record/people-section.js';
import type { Remark, Subject, Subjects } from './report-matter.js';

/**
 * The people to whom something befell. That there were none is only said when the list is whole and it is known of
 * everybody what became of them.
 * @example choosePeople(record, ['died'], 'Nobody died.').remarks // [{ state: 'missing', text: 'Nobody has said …' }]
 */
export function choosePeople(
  { sections }: Pick<IncidentRecord, 'sections'>,
  outcomes: readonly PersonOutcome[],
  none: string,
): Subjects {
  const people = sections.people?.people ?? [];
  const subjects = people
    .filter((person) => outcomes.includes(valueOf(person.outcome) ?? 'unknown'))
    .map((person) => subjectOf(people, person));
  const remarks = [...people.flatMap((person) => openOutcome(people, person)), ...listMayGrow(sections)];
  const empty: Remark = { name: null, state: 'answered', text: none, section: 'people', path: '/people' };
  return { subjects, remarks: subjects.length + remarks.length === 0 ? [empty] : remarks };
}

/** Everybody but those who are known to have been ashore. */
export function chooseOnTheWater({ sections }: Pick<IncidentRecord, 'sections'>): Subjects {
  const listed = sections.people?.people ?? [];
  const people = listed.filter(({ role }) => valueOf(role) !== 'ashore');
  const remarks = listMayGrow(sections);
  const empty: Remark = {
    name: null,
    state: 'answered',
    text: 'Nobody was on the water.',
    section: 'people',
    path: '/people',
  };
  return {
    subjects: people.map((person) => subjectOf(listed, person)),
    remarks: people.length + remarks.length === 0 ? [empty] : remarks,
  };
}

export function subjectOf(people: readonly PersonRecord[], person: PersonRecord): Subject {
  const name = nameListed('Person', people, person);
  return { name, section: 'people', path: `/people/${person.id}`, value: person };
}

/** What keeps the list from being everybody: nobody said that it is whole, or the numbers say that it is not. */
function listMayGrow({ craft, people }: IncidentRecord['sections']): Remark[] {
  const listed = people?.people ?? [];
  const remark = (text: string, path: string): Remark => ({
    name: null,
    state: 'missing',
    text,
    section: 'people',
    path,
  });
  return [
    ...(valueOf(people?.assessment) === 'complete'
      ? []
      : [remark('Nobody has said that everybody concerned is listed.', '/assessment')]),
    ...(valueOf(people?.everyoneAccountedFor) === 'no'
      ? [remark('Somebody is not accounted for.', '/everyoneAccountedFor')]
      : []),
    ...(craft?.craft ?? []).flatMap(({ id, name, aboard }) => {
      const [said, known] = [valueOf(aboard) ?? 0, listed.filter((person) => person.craft === id).length];
      return known < said ? [remark(`Of ${said} aboard ${name ?? id}, ${known} listed.`, '/people')] : [];
    }),
  ];
}

function openOutcome(people: readonly PersonRecord[], person: PersonRecord): Remark[] {
  const said = valueOf(person.outcome);
  if (said !== undefined && said !== 'unknown' && said !== 'not-back') return [];
  return [
    {
      name: nameListed('Person', people, person),
      state: said === undefined ? 'missing' : 'unknown',
      text: 'What became of this person is not known.',
      section: 'people',
      path: `/people/${person.id}/outcome`,
    },
  ];
}
