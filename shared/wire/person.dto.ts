import type { Ternary } from '../kernel/truth.js';
import type { Care, Person, PersonOutcome } from '../record/incident-facts.js';
import { treatmentSlugs } from '../vocabulary/treatments.js';
import {
  Fact,
  IdFact,
  ListOf,
  MayBeAbsent,
  numberFault,
  OneOf,
  TernaryFact,
  TextFact,
  wordFault,
} from './declare-fact.js';
import { InstantFact } from './declare-instant.js';

type Role = NonNullable<Person['role']>;

const ROLES: readonly Role[] = ['operator', 'passenger', 'towed', 'in-water', 'ashore', 'unknown'];
const OUTCOMES: readonly PersonOutcome[] = ['unhurt', 'injured', 'died', 'missing', 'not-back', 'unknown'];
const CARE: readonly Care[] = ['none', 'first-aid', 'beyond-first-aid', 'unknown'];

const HOURS = 'a number of hours, 0 or more, or unknown';
const hoursFault = numberFault(0, Number.MAX_VALUE, HOURS);

/** One person concerned, and what became of them. */
export class PersonDto implements Person {
  @IdFact()
  id: string;

  @MayBeAbsent()
  @OneOf(ROLES)
  role?: Role;

  @MayBeAbsent()
  @TextFact()
  vessel?: string;

  @MayBeAbsent()
  @TernaryFact()
  employee?: Ternary;

  @OneOf(OUTCOMES)
  outcome: PersonOutcome;

  @MayBeAbsent()
  @OneOf(CARE)
  care?: Care;

  @MayBeAbsent()
  @ListOf('treatments', wordFault(treatmentSlugs, 'the name of a treatment in the vocabulary'))
  treatments?: string[];

  @MayBeAbsent()
  @TernaryFact()
  inpatient?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  lostConsciousness?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  carriedFromScene?: Ternary;

  @MayBeAbsent()
  @Fact(HOURS, (value) => (value === 'unknown' ? null : hoursFault(value)))
  incapacitatedHours?: number | 'unknown';

  @MayBeAbsent()
  @InstantFact()
  diedAt?: string;

  @MayBeAbsent()
  @InstantFact()
  missingSince?: string;

  @MayBeAbsent()
  @TernaryFact()
  signsOfHarm?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  amputation?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  eyeLoss?: Ternary;

  @MayBeAbsent()
  @InstantFact()
  admittedAt?: string;

  @MayBeAbsent()
  @InstantFact()
  lostAt?: string;

  @MayBeAbsent()
  @InstantFact()
  harmLearnedAt?: string;
}
