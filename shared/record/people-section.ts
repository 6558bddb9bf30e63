import type { Known } from '../call/known.js';
import type { Stamp } from '../call/stamp.js';
import type { Ternary } from '../kernel/truth.js';
import type { Assessment, Care, Person, PersonOutcome } from './incident-facts.js';

export type LifeJacket = 'worn' | 'not-worn' | 'aboard-not-worn' | 'none-aboard' | 'unknown';
export type Lanyard = 'clipped' | 'not-clipped' | 'not-fitted' | 'unknown';
export type PersonRole = NonNullable<Person['role']>;

export const LIFE_JACKETS: readonly LifeJacket[] = [
  'worn',
  'not-worn',
  'aboard-not-worn',
  'none-aboard',
  'unknown',
];
export const LANYARDS: readonly Lanyard[] = ['clipped', 'not-clipped', 'not-fitted', 'unknown'];

export interface Injury {
  id: string;
  nature?: Known<string>;
  bodyPart?: Known<string>;
  extent?: Known<string>;
}

/** A person under age: who answers for them, and to whom they were given. */
export interface Minor {
  guardian?: string;
  relation?: string;
  guardianPresent?: Known<Ternary>;
  guardianPhone?: string;
  releasedTo?: string;
  releasedToRelation?: string;
  releasedBy?: string;
  released?: Stamp;
}

/** Name and pictures of the dead are restricted wherever the record is shown. */
export interface Death {
  /** Where, doing what, with whom. */
  lastSeen?: Known<string>;
  lastSeenAt?: Known<string>;
  lastSeenBy?: string;
  craftFoundAt?: Known<string>;
  craftFoundWhere?: Known<string>;
  craftFoundBy?: string;
  foundAt?: Known<string>;
  foundWhere?: Known<string>;
  foundBy?: string;
  /** What the examiner found; until then it is pending and nobody's guess is written here. */
  cause?: Known<string>;
  /** Who decides on the cause, and under which number. */
  examiner?: string;
  examinerReference?: string;
  /** The agency that tells the family: it is not for us to be first. */
  familyToldBy?: string;
  familyTold?: Stamp;
}

/** One person concerned, and what became of them. */
export interface PersonRecord {
  id: string;
  name?: string;
  phone?: string;
  address?: string;
  email?: string;
  /** Date of birth, YYYY-MM-DD. */
  birthDate?: Known<string>;
  age?: Known<number>;
  role?: Known<PersonRole>;
  /** Id of a craft of the section on craft. */
  craft?: string;
  seat?: Known<string>;
  /** An employee of the business, at work. */
  employee?: Known<Ternary>;
  lifeJacket?: Known<LifeJacket>;
  lanyard?: Known<Lanyard>;
  /** What they wore against cold water: swimwear, jeans, wet suit. */
  clothing?: Known<string>;
  experience?: Known<string>;
  training?: Known<string>;
  outcome?: Known<PersonOutcome>;
  injuries?: Injury[];
  /** The care needed, given or not. */
  care?: Known<Care>;
  /** Slugs of the vocabulary. */
  treatments?: Known<string[]>;
  treatedBy?: string;
  hospital?: Known<string>;
  inpatient?: Known<Ternary>;
  admittedAt?: Known<string>;
  /** When a limb or an eye was lost, where it was not in the occurrence itself. */
  lostAt?: Known<string>;
  /** When the business learned of the death, admission or loss, and that work caused it. */
  harmLearnedAt?: Known<string>;
  lostConsciousness?: Known<Ternary>;
  carriedFromScene?: Known<Ternary>;
  incapacitatedHours?: Known<number | 'unknown'>;
  amputation?: Known<Ternary>;
  eyeLoss?: Known<Ternary>;
  diedAt?: Known<string>;
  missingSince?: Known<string>;
  signsOfHarm?: Known<Ternary>;
  minor?: Minor;
  death?: Death;
}

export interface PeopleSection {
  everyoneAccountedFor?: Known<Ternary>;
  operatorAbleToReport?: Known<Ternary>;
  /** Are all the people concerned listed, with what became of them? */
  assessment?: Known<Assessment>;
  people?: PersonRecord[];
}
