import { valueOf } from '../call/known.js';
import type { IncidentRecord, SectionName } from '../record/incident-record.js';
import { subjectOf } from './choose-people.js';
import type { Remark, Subject, Subjects } from './report-matter.js';

type Sections = Pick<IncidentRecord, 'sections'>;

/** Those who saw it and are neither ours nor aboard: people ashore, other callers, contacts and givers of statements. */
export function chooseWitnesses({ sections }: Sections): Subjects {
  const { call, contacts, people, statements } = sections;
  const ashore = (people?.people ?? []).filter(
    ({ role, employee }) => valueOf(role) === 'ashore' && valueOf(employee) !== 'yes',
  );
  const others: Subject[] = [
    ...(call?.otherParties ?? []).map((party) => named('call', `/otherParties/${party.id}`, party)),
    ...(contacts?.contacts ?? [])
      .filter(({ party, person }) => party === 'witness' && person === undefined)
      .map((contact) => named('contacts', `/contacts/${contact.id}`, contact)),
    ...(statements?.statements ?? [])
      .filter(({ person }) => person === undefined)
      .map((statement) => named('statements', `/statements/${statement.id}`, statement)),
  ];
  const all = [...ashore.map(subjectOf), ...others];
  const subjects = all.filter((one, index) => all.findIndex(({ name }) => name === one.name) === index);
  return { subjects, remarks: subjects.length === 0 ? [NO_WITNESS] : [] };
}

/** Everybody who came to help. */
export function chooseResponders({ sections }: Sections): Subjects {
  const { call, 'emergency-response': response } = sections;
  const subjects = (response?.responders ?? []).map((one) => ({
    name: one.who ?? one.id,
    section: 'emergency-response' as const,
    path: `/responders/${one.id}`,
    value: one,
  }));
  const called = valueOf(response?.emergencyServicesCalled) ?? valueOf(call?.emergencyServicesTold);
  const none = called === 'no' ? NOBODY_CALLED : NOBODY_SAID;
  return { subjects, remarks: subjects.length === 0 ? [none] : [] };
}

function named(
  section: SectionName,
  path: string,
  value: { readonly id: string; readonly name?: string },
): Subject {
  return { name: value.name ?? value.id, section, path, value };
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
