import type { SectionName } from '../record/incident-record.js';
import { AccountDto } from './record-account.dto.js';
import { AuthoritiesDto } from './record-authorities.dto.js';
import { CallDto } from './record-call.dto.js';
import { CheckInDto } from './record-check-in.dto.js';
import { ConditionsDto } from './record-conditions.dto.js';
import { CraftSectionDto } from './record-craft.dto.js';
import { DamageSectionDto } from './record-damage.dto.js';
import { ContactsDto, StatementsDto, TimelineDto } from './record-log.dto.js';
import type { JsonSchema, Shape } from './record-members.js';
import { PeopleSectionDto } from './record-people.dto.js';
import { RentalSectionDto } from './record-rental.dto.js';
import { EmergencyResponseDto } from './record-response.dto.js';
import { SceneDto } from './record-scene.dto.js';
import { schemaOf } from './record-schema.js';
import { TimeAndPlaceDto } from './record-time-and-place.dto.js';

/** The class of each section. */
export const SECTION_SHAPES: Readonly<Record<SectionName, Shape>> = {
  call: CallDto,
  'time-and-place': TimeAndPlaceDto,
  account: AccountDto,
  conditions: ConditionsDto,
  scene: SceneDto,
  'emergency-response': EmergencyResponseDto,
  craft: CraftSectionDto,
  people: PeopleSectionDto,
  damage: DamageSectionDto,
  rental: RentalSectionDto,
  authorities: AuthoritiesDto,
  statements: StatementsDto,
  contacts: ContactsDto,
  timeline: TimelineDto,
  'check-in': CheckInDto,
};

/** `isSectionName('people')` is true, `isSectionName('incident')` is false: that one is written by the service. */
export function isSectionName(name: string): name is SectionName {
  return Object.hasOwn(SECTION_SHAPES, name);
}

/** The published JSON Schema of a section. */
export function sectionSchema(name: SectionName): JsonSchema {
  return schemaOf(SECTION_SHAPES[name]);
}
