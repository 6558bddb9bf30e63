import { valueOf } from '../call/known.js';
import { stampInstant } from '../call/stamp.js';
import { splitWords } from '../call/split-words.js';
import { allOf, anyOf, type Ternary, type Truth, truthOf } from '../kernel/truth.js';
import { readConsequence } from '../law/read-consequence.js';
import type { ContactParty } from '../record/account-sections.js';
import type { Craft } from '../record/craft-section.js';
import type { IncidentRecord } from '../record/incident-record.js';
import type { PersonRecord } from '../record/people-section.js';
import { readClaim } from '../record/read-claim.js';
import { recordToFacts } from '../record/record-to-facts.js';
import { whenItHappened } from '../record/when-it-happened.js';
import { readInstant } from '../time/read-instant.js';
import type { TaskFact } from './task-template.js';

/** One of our craft, by a key that stays when the section on craft says what the call only named. */
export interface NamedCraft {
  readonly key: string;
  readonly name: string;
}

export interface Promised {
  /** Id of the contact. */
  readonly contact: string;
  readonly party: ContactParty;
  /** Epoch milliseconds. */
  readonly at: number;
  /** When it was promised for, where somebody said so. */
  readonly by: number | null;
}

/** What the record says, as far as it decides about tasks. */
export interface Situation {
  readonly facts: Readonly<Record<TaskFact, Truth>>;
  /** Epoch milliseconds: when the business first knew, and the earliest at which it can have happened. */
  readonly learnedAt: number;
  readonly occurredAt: number;
  readonly ownCraft: readonly NamedCraft[];
  /** Ids of the people of the record. */
  readonly people: readonly string[];
  /** Harms that are certain, in words without a name. */
  readonly harm: readonly string[];
  readonly promises: readonly Promised[];
}

/**
 * @example readSituation(recordOfABareCall).facts.serious // 'unknown'
 */
export function readSituation(record: IncidentRecord): Situation {
  const { incident, sections } = record;
  const when = whenItHappened(record);
  const { claimed } = readClaim(record);
  const { died, missing, beyondFirstAid } = readConsequence(recordToFacts(record), false);
  const people = sections.people?.people ?? [];
  const harms: readonly [string, Ternary][] = [
    ['a death', died],
    ['a person missing', missing],
    ['an injury beyond first aid', beyondFirstAid],
  ];
  const claims: string[] = claimed ? ['a claim'] : [];
  return {
    facts: {
      'everyone-accounted-for': truthOf(valueOf(sections.people?.everyoneAccountedFor)),
      serious: anyOf([truthOf(died), truthOf(missing), truthOf(beyondFirstAid), claimed ? 'true' : 'false']),
      bereaved: anyOf([truthOf(died), truthOf(missing)]),
      'own-craft': ownCraftConcerned(sections),
      rented: rented(sections),
      'written-claim': writtenClaim(record),
      'employee-hurt': employeeHurt(people),
      'no-interview-asked': anyOf(
        (sections.authorities?.officers ?? []).map(({ askedNotToInterview }) =>
          truthOf(valueOf(askedNotToInterview) ?? 'no'),
        ),
      ),
    },
    learnedAt: readInstant(when.learnedAt),
    occurredAt: readInstant(when.occurredAt),
    ownCraft: namedCraft(sections),
    people: people.map(({ id }) => id),
    harm: [...harms.flatMap(([words, answer]) => (answer === 'yes' ? [words] : [])), ...claims],
    promises: (sections.contacts?.contacts ?? []).flatMap((contact) =>
      contact.promised === undefined
        ? []
        : [
            {
              contact: contact.id,
              party: contact.party ?? 'other',
              at: contact.at === undefined ? readInstant(incident.openedAt) : stampInstant(contact.at),
              by: contact.promisedBy === undefined ? null : readInstant(contact.promisedBy),
            },
          ],
    ),
  };
}

/** Of people whom the record knows as employees at work. */
function employeeHurt(people: readonly PersonRecord[]): Truth {
  return anyOf(
    people.map(({ employee, outcome }) => {
      const became = valueOf(outcome) ?? 'unknown';
      const open = became === 'unknown' || became === 'not-back';
      const harmed: Truth = became === 'unhurt' ? 'false' : open ? 'unknown' : 'true';
      return allOf([truthOf(valueOf(employee)), harmed]);
    }),
  );
}

/** Unknown where somebody was asked and did not know, and where a lawyer is heard of: what comes from one may be a claim. */
function writtenClaim(record: IncidentRecord): Truth {
  const { first, unclear, claimed } = readClaim(record);
  if (first !== null) return 'true';
  const fromLawyer = (record.sections.contacts?.contacts ?? []).some(
    ({ party, direction, writtenDemand }) =>
      party === 'lawyer' && direction !== 'out' && valueOf(writtenDemand) !== 'no',
  );
  return claimed || unclear.length > 0 || fromLawyer ? 'unknown' : 'false';
}

function ownCraftConcerned({ call, craft }: IncidentRecord['sections']): Truth {
  const listed = craft?.craft ?? [];
  if (listed.length === 0) return (call?.craftNamed ?? []).length > 0 ? 'true' : 'unknown';
  return anyOf(listed.map(isOurs));
}

function isOurs({ ours, fleetCraft }: Craft): Truth {
  if (ours !== undefined) return ours ? 'true' : 'false';
  return fleetCraft === undefined ? 'unknown' : 'true';
}

function rented({ craft, rental }: IncidentRecord['sections']): Truth {
  if (rental !== undefined && Object.keys(rental).length > 0) return 'true';
  const listed = craft?.craft ?? [];
  if (listed.length === 0) return 'unknown';
  return anyOf(
    listed.map((one) => {
      const use = valueOf(one.use);
      if (use === undefined) return allOf([isOurs(one), 'unknown']);
      return use === 'rental' ? 'true' : 'false';
    }),
  );
}

/** What the section on craft says goes before what the call named; a craft that is certainly not ours is left out. */
function namedCraft({ call, craft }: IncidentRecord['sections']): NamedCraft[] {
  const listed = (craft?.craft ?? []).filter((one) => isOurs(one) !== 'false');
  const names =
    (craft?.craft ?? []).length > 0 ? listed.map(({ name, id }) => name ?? id) : (call?.craftNamed ?? []);
  const byKey = new Map(names.map((name) => [splitWords(name).join('-') || name, name]));
  return [...byKey].map(([key, name]) => ({ key, name }));
}
