import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';
import type { Assessment, Care, PersonOutcome } from '../record/incident-facts.js';
import {
  LANYARDS,
  LIFE_JACKETS,
  type Death,
  type Injury,
  type Lanyard,
  type LifeJacket,
  type Minor,
  type PeopleSection,
  type PersonRecord,
  type PersonRole,
} from '../record/people-section.js';
import { stamp } from './record-compounds.js';
import { Items, KnownFact, Needed, Part, Value } from './record-members.js';
import {
  count,
  day,
  hoursOrUnknown,
  id,
  instant,
  line,
  oneOf,
  ternary,
  text,
  treatments,
} from './record-values.js';

const ROLES: readonly PersonRole[] = ['operator', 'passenger', 'towed', 'in-water', 'ashore', 'unknown'];
const OUTCOMES: readonly PersonOutcome[] = ['unhurt', 'injured', 'died', 'missing', 'not-back', 'unknown'];
const CARE: readonly Care[] = ['none', 'first-aid', 'beyond-first-aid', 'unknown'];
export const ASSESSMENTS: readonly Assessment[] = ['complete', 'partial', 'not-yet'];

class InjuryDto implements Injury {
  @Needed(id)
  id: string;

  @KnownFact(line)
  nature?: Known<string>;

  @KnownFact(line)
  bodyPart?: Known<string>;

  @KnownFact(text)
  extent?: Known<string>;
}

class MinorDto implements Minor {
  @Value(line)
  guardian?: string;

  @Value(line)
  relation?: string;

  @KnownFact(ternary)
  guardianPresent?: Known<Ternary>;

  @Value(line)
  guardianPhone?: string;

  @Value(line)
  releasedTo?: string;

  @Value(line)
  releasedToRelation?: string;

  @Value(line)
  releasedBy?: string;

  @Value(stamp)
  released?: Stamp;
}

class DeathDto implements Death {
  @KnownFact(text)
  lastSeen?: Known<string>;

  @KnownFact(instant)
  lastSeenAt?: Known<string>;

  @Value(line)
  lastSeenBy?: string;

  @KnownFact(instant)
  craftFoundAt?: Known<string>;

  @KnownFact(line)
  craftFoundWhere?: Known<string>;

  @Value(line)
  craftFoundBy?: string;

  @KnownFact(instant)
  foundAt?: Known<string>;

  @KnownFact(line)
  foundWhere?: Known<string>;

  @Value(line)
  foundBy?: string;

  @KnownFact(text)
  cause?: Known<string>;

  @Value(line)
  examiner?: string;

  @Value(line)
  examinerReference?: string;

  @Value(line)
  familyToldBy?: string;

  @Value(stamp)
  familyTold?: Stamp;
}

class PersonRecordDto implements PersonRecord {
  @Needed(id)
  id: string;

  @Value(line)
  name?: string;

  @Value(line)
  phone?: string;

  @Value(line)
  address?: string;

  @Value(line)
  email?: string;

  @KnownFact(day)
  birthDate?: Known<string>;

  @KnownFact(count)
  age?: Known<number>;

  @KnownFact(oneOf(ROLES))
  role?: Known<PersonRole>;

  @Value(id)
  craft?: string;

  @KnownFact(line)
  seat?: Known<string>;

  @KnownFact(ternary)
  employee?: Known<Ternary>;

  @KnownFact(oneOf(LIFE_JACKETS))
  lifeJacket?: Known<LifeJacket>;

  @KnownFact(oneOf(LANYARDS))
  lanyard?: Known<Lanyard>;

  @KnownFact(line)
  clothing?: Known<string>;

  @KnownFact(line)
  experience?: Known<string>;

  @KnownFact(line)
  training?: Known<string>;

  @KnownFact(oneOf(OUTCOMES))
  outcome?: Known<PersonOutcome>;

  @Items(() => InjuryDto)
  injuries?: InjuryDto[];

  @KnownFact(oneOf(CARE))
  care?: Known<Care>;

  @KnownFact(treatments)
  treatments?: Known<string[]>;

  @Value(line)
  treatedBy?: string;

  @KnownFact(line)
  hospital?: Known<string>;

  @KnownFact(ternary)
  inpatient?: Known<Ternary>;

  @KnownFact(instant)
  admittedAt?: Known<string>;

  @KnownFact(instant)
  lostAt?: Known<string>;

  @KnownFact(instant)
  harmLearnedAt?: Known<string>;

  @KnownFact(ternary)
  lostConsciousness?: Known<Ternary>;

  @KnownFact(ternary)
  carriedFromScene?: Known<Ternary>;

  @KnownFact(hoursOrUnknown)
  incapacitatedHours?: Known<number | 'unknown'>;

  @KnownFact(ternary)
  amputation?: Known<Ternary>;

  @KnownFact(ternary)
  eyeLoss?: Known<Ternary>;

  @KnownFact(instant)
  diedAt?: Known<string>;

  @KnownFact(instant)
  missingSince?: Known<string>;

  @KnownFact(ternary)
  signsOfHarm?: Known<Ternary>;

  @Part(() => MinorDto)
  minor?: MinorDto;

  @Part(() => DeathDto)
  death?: DeathDto;
}

export class PeopleSectionDto implements PeopleSection {
  @KnownFact(ternary)
  everyoneAccountedFor?: Known<Ternary>;

  @KnownFact(ternary)
  operatorAbleToReport?: Known<Ternary>;

  @KnownFact(oneOf(ASSESSMENTS))
  assessment?: Known<Assessment>;

  @Items(() => PersonRecordDto)
  people?: PersonRecordDto[];
}
