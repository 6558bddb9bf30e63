import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';
import {
  CONTACT_PARTIES,
  type Addendum,
  type Contact,
  type ContactParty,
  type ContactsSection,
  type Statement,
  type StatementsSection,
  type TimelineEntry,
  type TimelineSection,
} from '../record/account-sections.js';
import { stamp } from './record-compounds.js';
import { Items, KnownFact, Needed, Value } from './record-members.js';
import { id, instant, line, lines, oneOf, ternary, text } from './record-values.js';

const DIRECTIONS: readonly NonNullable<Contact['direction']>[] = ['in', 'out'];

class AddendumDto implements Addendum {
  @Needed(id)
  id: string;

  @Value(instant)
  at?: string;

  @Value(line)
  by?: string;

  @Value(line)
  takenBy?: string;

  @Value(text)
  words?: string;
}

class StatementDto implements Statement {
  @Needed(id)
  id: string;

  @Value(id)
  person?: string;

  @Value(line)
  name?: string;

  @Value(line)
  takenBy?: string;

  @Value(instant)
  startedAt?: string;

  @Value(instant)
  endedAt?: string;

  @Value(line)
  place?: string;

  @Value(lines)
  present?: string[];

  @Value(line)
  language?: string;

  @Value(line)
  interpreter?: string;

  @Value(text)
  words?: string;

  @Value(text)
  translation?: string;

  @KnownFact(ternary)
  readBack?: Known<Ternary>;

  @KnownFact(ternary)
  signed?: Known<Ternary>;

  @Value(line)
  original?: string;

  @KnownFact(ternary)
  copyGiven?: Known<Ternary>;

  @KnownFact(instant)
  copyGivenAt?: Known<string>;

  @KnownFact(ternary)
  refused?: Known<Ternary>;

  @KnownFact(text)
  whyRefused?: Known<string>;

  @Items(() => AddendumDto)
  addenda?: AddendumDto[];
}

export class StatementsDto implements StatementsSection {
  @Items(() => StatementDto)
  statements?: StatementDto[];
}

class ContactDto implements Contact {
  @Needed(id)
  id: string;

  @Value(stamp)
  at?: Stamp;

  @Value(oneOf(CONTACT_PARTIES))
  party?: ContactParty;

  @Value(line)
  name?: string;

  @Value(id)
  person?: string;

  @Value(line)
  speaksFor?: string;

  @Value(line)
  channel?: string;

  @Value(oneOf(DIRECTIONS))
  direction?: 'in' | 'out';

  @Value(line)
  by?: string;

  @Value(text)
  summary?: string;

  @KnownFact(ternary)
  writtenDemand?: Known<Ternary>;

  @KnownFact(ternary)
  lawyerSpeaks?: Known<Ternary>;

  @Value(line)
  paper?: string;

  @Value(text)
  promised?: string;

  @Value(instant)
  promisedBy?: string;
}

export class ContactsDto implements ContactsSection {
  @Items(() => ContactDto)
  contacts?: ContactDto[];
}

class TimelineEntryDto implements TimelineEntry {
  @Needed(id)
  id: string;

  @Value(stamp)
  at?: Stamp;

  @Value(text)
  what?: string;

  @Value(line)
  by?: string;

  @Value(line)
  radioChannel?: string;

  @Value(line)
  speaker?: string;

  @Value(line)
  spokenTo?: string;
}

export class TimelineDto implements TimelineSection {
  @Items(() => TimelineEntryDto)
  entries?: TimelineEntryDto[];
}
