import type { Ternary } from '../kernel/truth.js';
import type { Assessment, IncidentFacts } from '../record/incident-facts.js';
import { casualtyTypeSlugs } from '../vocabulary/casualty-types.js';
import type { DamageItemDto } from './damage-item.dto.js';
import {
  Fact,
  ListOf,
  MayBeAbsent,
  MayBeNull,
  ObjectsFact,
  OneOf,
  TernaryFact,
  wordFault,
} from './declare-fact.js';
import { InstantFact } from './declare-instant.js';
import { isObject } from './is-object.js';
import type { PersonDto } from './person.dto.js';
import type { PlaceDto } from './place.dto.js';
import type { ScopeAnswerDto } from './scope-answer.dto.js';
import type { VesselDto } from './vessel.dto.js';

const ASSESSMENTS: readonly Assessment[] = ['complete', 'partial', 'not-yet'];

/** What is known, and known not to be known, about one occurrence. */
export class IncidentFactsDto implements IncidentFacts {
  @Fact('the number 1', (value) => (value === 1 ? null : 'Must be the number 1: no other version is known.'))
  schemaVersion: 1;

  @InstantFact()
  occurredAt: string;

  @MayBeNull()
  @InstantFact()
  occurredUntil?: string | null;

  @MayBeNull()
  @InstantFact()
  learnedAt?: string | null;

  @Fact('an object, empty when nothing is known', (value) => (isObject(value) ? null : 'Must be an object.'))
  place: PlaceDto;

  @MayBeAbsent()
  @TernaryFact()
  federalWaters?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  involvesVesselOrEquipment?: Ternary;

  @ListOf(
    'casualty types, empty when unknown',
    wordFault(casualtyTypeSlugs, 'a casualty type of the vocabulary'),
  )
  casualtyTypes: string[];

  @MayBeAbsent()
  @TernaryFact()
  everyoneAccountedFor?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  operatorAbleToReport?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  oilSheen?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  bridgeStruck?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  propulsionOrSteeringLost?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  seaworthinessImpaired?: Ternary;

  @ObjectsFact('vessels')
  vessels: VesselDto[];

  @OneOf(ASSESSMENTS)
  peopleAssessment: Assessment;

  @ObjectsFact('people')
  people: PersonDto[];

  @OneOf(ASSESSMENTS)
  damageAssessment: Assessment;

  @ObjectsFact('damaged or lost things')
  damage: DamageItemDto[];

  @MayBeAbsent()
  @TernaryFact()
  officerAtScene?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  officerFiledReport?: Ternary;

  @MayBeAbsent()
  @TernaryFact()
  emergencyServicesCalled?: Ternary;

  @MayBeAbsent()
  @ObjectsFact('answers')
  scopeAnswers?: ScopeAnswerDto[];
}
