import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';
import type { Quantity } from './quantity-as-entered.js';

/** What happened, as it is understood so far. */
export interface AccountSection {
  /** Slugs of the vocabulary, first event first. */
  casualtyTypes?: Known<string[]>;
  involvesVesselOrEquipment?: Known<Ternary>;
  oilSheen?: Known<Ternary>;
  whatHappened?: Known<string>;
  equipmentFailures?: Known<string>;
  /** Facts, not blame. */
  contributingFactors?: Known<string[]>;
}

export interface ConditionsSection {
  weather?: Known<string>;
  water?: Known<string>;
  waves?: Known<Quantity>;
  wind?: Known<Quantity>;
  windFrom?: Known<string>;
  visibility?: Known<string>;
  light?: Known<string>;
  airTemperature?: Known<Quantity>;
  waterTemperature?: Known<Quantity>;
  waterDepth?: Known<Quantity>;
  current?: Known<string>;
  traffic?: Known<string>;
  hazards?: Known<string>;
  forecastUsed?: Known<string>;
}

/** A correction to a statement; the words themselves stay. */
export interface Addendum {
  id: string;
  at?: string;
  by?: string;
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
  words?: string;
  copyGiven?: Known<Ternary>;
  refused?: Known<Ternary>;
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

/** One exchange with somebody outside. */
export interface Contact {
  id: string;
  at?: Stamp;
  party?: ContactParty;
  name?: string;
  channel?: string;
  direction?: 'in' | 'out';
  by?: string;
  summary?: string;
  /** A written demand may be the first claim, from which clocks run. */
  writtenDemand?: Known<Ternary>;
  /** A lawyer speaks for them: no automatic mail goes to this person any more. */
  lawyerSpeaks?: Known<Ternary>;
  promised?: string;
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
}

export interface TimelineSection {
  entries?: TimelineEntry[];
}

/** The joint inspection of one minute when a craft comes back. */
export interface CheckInSection {
  departedAt?: Known<string>;
  returnedAt?: Known<string>;
  inspected?: Stamp;
  by?: string;
  found?: Known<string>;
  renterAnswer?: Known<'agrees' | 'disputes' | 'refuses' | 'absent'>;
  renterWords?: string;
  /** Where the signature is kept. */
  signature?: string;
}
