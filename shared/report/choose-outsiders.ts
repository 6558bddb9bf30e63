import { valueOf } from '../call/known.js';
import type { IncidentRecord, SectionName } from '../record/incident-record.js';
import { nameListed } from '../record/name-listed.js';
import { subjectOf } from './choose-people.js';
import type { Remark, Subject, Subjects } from './report-matter.js';

type Sections = Pick<IncidentRecord, 'sections'>;

/** Those who saw it and are neither ours nor aboard: people ashore, other callers, contacts and givers of statements. */
export function chooseWitnesses({ sections }: Sections): Subjects {
  const { call, contacts, people, statements } = sections;
  const listed = people?.people ?? [];
  const ashore = listed.filter(
    ({ role, employee }) => valueOf(role) === 'ashore' && valueOf(employee) !== 'yes',
  );
  const others: Subject[] = [
    ...namedOf('call', '/otherParties', 'Other party', call?.otherParties),
    ...namedOf(
      'contacts',
      '/contacts',
      'Contact',
      contacts?.contacts,
      ({ party, person }) => party === 'witness' && person === undefined,
    ),
    ...namedOf(
      'statements',
      '/statements',
      'Statement',
      statements?.statements,
      ({ person }) => person === undefined,
    ),
  ];
  const all = [...ashore.map((person) => subjectOf(listed, person)), ...others];
  const subjects = all.filter((one, index) => all.findIndex(({ name }) => name === one.name) === index);
  return { subjects, remarks: subjects.length === 0 ? [NO_WITNESS] : [] };
}

/** Everybody who came to help. */
export function chooseResponders({ sections }: Sections): Subjects {
  const { call, 'emergency-response': response } = sections;
  const subjects = (response?.responders ?? []).map((one, place) => ({
    name: one.who ?? `Responder ${place + 1}`,
    section: 'emergency-response' as const,
    path: `/responders/${one.id}`,
    value: one,
  }));
  const called = valueOf(response?.emergencyServicesCalled) ?? valueOf(call?.emergencyServicesTold);
  const none = called === 'no' ? NOBODY_CALLED : NOBODY_SAID;
  return { subjects, remarks: subjects.length === 0 ? [none] : [] };
}

function namedOf<Item extends { readonly id: string; readonly name?: string }>(
  section: SectionName,
  path: string,
  word: string,
  list: readonly Item[] = [],
  concerns: (item: Item) => boolean = () => true,
): Subject[] {
  return list
    .filter(concerns)
    .map((value) => ({ name: nameListed(word, list, value), section, path: `${path}/${value.id}`, value }));
}

const NO_WITNESS: Remark = {
  name: null,
  state: 'missing',
  text: 'No witness is recorded.',
  section: 'contacts',
  path: '',
};
const NOBODY_CALLED: Remark = {
  name: null,
  state: 'answered',
  text: 'No help was called.',
  section: 'emergency-response',
  path: '/emergencyServicesCalled',
};
const NOBODY_SAID: Remark = {
  name: null,
  state: 'missing',
  text: 'Who came to help is not recorded.',
  section: 'emergency-response',
  path: '',
};
