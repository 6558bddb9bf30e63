import { valueOf } from '../call/known.js';
import { stampInstant } from '../call/stamp.js';
import type { Contact, ContactParty } from './account-sections.js';
import type { IncidentRecord } from './incident-record.js';

export interface WrittenDemand {
  /** Id of the entry of the contact log. */
  readonly contact: string;
  /** RFC 3339 in UTC; null while nobody has said when it came. */
  readonly at: string | null;
  readonly from: string | null;
  readonly party: ContactParty | null;
}

/** To whom nothing is sent by itself any more, since a lawyer speaks for them. */
export interface StoppedMail {
  readonly contact: string;
  /** Id of a person of the section on people; null where the lawyer's client is not one of them. */
  readonly person: string | null;
  readonly name: string | null;
}

export interface Claim {
  /** Somebody has claimed in writing, or a lawyer has written. */
  readonly claimed: boolean;
  /** Ids of the entries that say so. */
  readonly entries: readonly string[];
  /** The earliest written demand: from it clocks run, and none that comes later starts them again. */
  readonly first: WrittenDemand | null;
  /** Ids of entries that may be an earlier demand: it is not known whether they are one, or when they came. */
  readonly unclear: readonly string[];
  readonly mailStopped: readonly StoppedMail[];
}

/**
 * What the contact log says of a claim. Only what comes in is a demand. Where nobody has said whom a lawyer speaks for,
 * neither person nor name is given, and then mail goes to nobody outside by itself.
 * @example readClaim(recordOfABareCall) // { claimed: false, entries: [], first: null, unclear: [], mailStopped: [] }
 */
export function readClaim({ sections }: IncidentRecord): Claim {
  const contacts = sections.contacts?.contacts ?? [];
  const incoming = contacts.filter(({ direction }) => direction !== 'out');
  const demands = incoming.filter(({ writtenDemand }) => valueOf(writtenDemand) === 'yes').map(demandOf);
  const lawyers = contacts.filter(({ lawyerSpeaks }) => valueOf(lawyerSpeaks) === 'yes');
  const entries = [...new Set([...demands.map(({ contact }) => contact), ...lawyers.map(({ id }) => id)])];
  const [first = null] = [...demands].sort((one, other) => timeOf(one) - timeOf(other));
  return {
    claimed: entries.length > 0,
    entries,
    first,
    unclear: [
      ...demands.filter((demand) => demand.at === null && demand !== first).map(({ contact }) => contact),
      ...incoming.filter(({ writtenDemand }) => valueOf(writtenDemand) === 'unknown').map(({ id }) => id),
    ],
    mailStopped: lawyers.map((contact) => stoppedBy(contact, sections.people?.people ?? [])),
  };
}

function demandOf({ id, at, name, party }: Contact): WrittenDemand {
  const when = at === undefined ? null : new Date(stampInstant(at)).toISOString();
  return { contact: id, at: when, from: name ?? null, party: party ?? null };
}

const timeOf = ({ at }: WrittenDemand): number => (at === null ? Number.MAX_SAFE_INTEGER : Date.parse(at));

function stoppedBy(
  { id, person, party, name, speaksFor }: Contact,
  people: readonly { id: string; name?: string }[],
): StoppedMail {
  const listed = people.find((one) => one.id === person);
  const client = party === 'lawyer' ? speaksFor : (speaksFor ?? name);
  return { contact: id, person: listed?.id ?? null, name: listed?.name ?? client ?? null };
}
