import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';

/** What happened, as it is understood so far. */
export interface AccountSection {
  /** Slugs of the vocabulary, first event first. */
  casualtyTypes?: Known<string[]>;
  involvesVesselOrEquipment?: Known<Ternary>;
  oilSheen?: Known<Ternary>;
  bridgeStruck?: Known<Ternary>;
  propulsionOrSteeringLost?: Known<Ternary>;
  seaworthinessImpaired?: Known<Ternary>;
  whatHappened?: Known<string>;
  equipmentFailures?: Known<string>;
  /** Facts, not blame. */
  contributingFactors?: Known<string[]>;
}

/** A correction to a statement; the words themselves stay. */
export interface Addendum {
  id: string;
  at?: string;
  /** Whose words they are, and who wrote them down. */
  by?: string;
  takenBy?: string;
  words?: string;
}

/** What one person said, in that person's words. */
export interface Statement {
  id: string;
  /** Id of a person of the section on people. */
  person?: string;
  name?: string;
  takenBy?: string;
  startedAt?: string;
  endedAt?: string;
  place?: string;
  present?: string[];
  language?: string;
  interpreter?: string;
  /** As they were spoken or written, in that language. */
  words?: string;
  /** Beside the words, never in their place. */
  translation?: string;
  readBack?: Known<Ternary>;
  signed?: Known<Ternary>;
  /** Where the paper or the recording is. */
  original?: string;
  copyGiven?: Known<Ternary>;
  copyGivenAt?: Known<string>;
  refused?: Known<Ternary>;
  whyRefused?: Known<string>;
  addenda?: Addendum[];
}

export interface StatementsSection {
  statements?: Statement[];
}

export type ContactParty =
  'renter' | 'family' | 'other-party' | 'witness' | 'insurer' | 'agency' | 'lawyer' | 'press' | 'other';

export const CONTACT_PARTIES: readonly ContactParty[] = [
  'renter',
  'family',
  'other-party',
  'witness',
  'insurer',
  'agency',
  'lawyer',
  'press',
  'other',
];

/** One exchange with somebody outside, both ways. */
export interface Contact {
  id: string;
  at?: Stamp;
  party?: ContactParty;
  name?: string;
  /** Id of a person of the section on people: the other side of the exchange, or whom a lawyer speaks for. */
  person?: string;
  /** Whom a lawyer or an insurer speaks for, where that person is not listed. */
  speaksFor?: string;
  channel?: string;
  direction?: 'in' | 'out';
  by?: string;
  summary?: string;
  /** A written demand may be the first claim, from which clocks run. */
  writtenDemand?: Known<Ternary>;
  /** A lawyer speaks for them: no automatic mail goes to this person any more. */
  lawyerSpeaks?: Known<Ternary>;
  /** Where the letter or the message is kept. */
  paper?: string;
  /** What we promised, and by when (RFC 3339). */
  promised?: string;
  promisedBy?: string;
}

export interface ContactsSection {
  contacts?: Contact[];
}

export interface TimelineEntry {
  id: string;
  at?: Stamp;
  what?: string;
  by?: string;
  /** One line of the radio: on which channel, and who spoke. */
  radioChannel?: string;
  speaker?: string;
  spokenTo?: string;
}

export interface TimelineSection {
  entries?: TimelineEntry[];
}
