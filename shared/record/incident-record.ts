import type { Call } from '../call/call.js';
import type {
  AccountSection,
  ContactsSection,
  StatementsSection,
  TimelineSection,
} from './account-sections.js';
import type { CheckInSection } from './check-in-section.js';
import type { ConditionsSection } from './conditions-section.js';
import type { CraftSection } from './craft-section.js';
import type { DamageSection } from './damage-section.js';
import type { PeopleSection } from './people-section.js';
import type { RentalSection } from './rental-section.js';
import type { AuthoritiesSection, EmergencyResponseSection } from './response-sections.js';
import type { SceneSection } from './scene-section.js';
import type { TimeAndPlace } from './time-and-place.js';

/** The sections of a record, each a document of its own that is written, amended and read by itself. */
export interface RecordSections {
  call: Call;
  'time-and-place': TimeAndPlace;
  account: AccountSection;
  conditions: ConditionsSection;
  scene: SceneSection;
  'emergency-response': EmergencyResponseSection;
  craft: CraftSection;
  people: PeopleSection;
  damage: DamageSection;
  rental: RentalSection;
  authorities: AuthoritiesSection;
  statements: StatementsSection;
  contacts: ContactsSection;
  timeline: TimelineSection;
  'check-in': CheckInSection;
}

export type SectionName = keyof RecordSections;

export const SECTION_NAMES: readonly SectionName[] = [
  'call',
  'time-and-place',
  'account',
  'conditions',
  'scene',
  'emergency-response',
  'craft',
  'people',
  'damage',
  'rental',
  'authorities',
  'statements',
  'contacts',
  'timeline',
  'check-in',
];

export type IncidentStatus = 'open' | 'closed';

/** What the service itself says of an incident; amended like a section, under the name `incident`. */
export interface IncidentHead {
  reference: string;
  /** RFC 3339. */
  openedAt: string;
  status: IncidentStatus;
  /** IANA zone of the business that took the call. */
  timeZone: string;
  /** Ids of other incidents that are the same event; both references stay. */
  sameEventAs?: string[];
}

/** Everything known about one incident. A section that nobody has written yet is absent. */
export interface IncidentRecord {
  incident: IncidentHead;
  sections: Partial<RecordSections>;
}
