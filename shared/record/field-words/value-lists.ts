import type { ValueWords } from './value-words.js';
import type { UnitName } from './en.js';

/** Fields whose values are words of a closed list that is not a plain yes, no or unknown. */
export const VALUE_LISTS: Readonly<Record<string, keyof ValueWords>> = {
  'call:/kind': 'callKind',
  'call:/channel': 'callChannel',
  'call:/overdue/ended': 'overdueEnd',
  'emergency-response:/responders/*/kind': 'responder',
  'craft:/craft/*/use': 'use',
  'craft:/craft/*/notPhotographed/*/shot': 'shot',
  'people:/assessment': 'assessment',
  'people:/people/*/role': 'role',
  'people:/people/*/lifeJacket': 'lifeJacket',
  'people:/people/*/lanyard': 'lanyard',
  'people:/people/*/outcome': 'outcome',
  'people:/people/*/care': 'care',
  'damage:/assessment': 'assessment',
  'damage:/lines/*/of': 'thing',
  'damage:/lines/*/basis': 'basis',
  'damage:/money/*/kind': 'money',
  'authorities:/handedOver/*/basis': 'handedOver',
  'contacts:/contacts/*/party': 'party',
  'contacts:/contacts/*/direction': 'direction',
  'check-in:/renterAnswer': 'renterAnswer',
  'check-in:/findings/*/renterAnswer': 'renterAnswer',
  'scene:/marks/*/kind': 'sceneThing',
  'scene:/marks/*/movement': 'sceneMovement',
  'scene:/lines/*/kind': 'sceneLine',
  'incident:/status': 'status',
};

/** Fields whose values are slugs of the vocabulary. */
export const VOCABULARY_FIELDS: ReadonlySet<string> = new Set([
  'account:/casualtyTypes',
  'craft:/craft/*/type',
  'people:/people/*/treatments',
]);

/** Figures that do not say by themselves what they count; a measure carries its own unit. */
export const UNITS: Readonly<Record<string, UnitName>> = {
  'call:/peopleInWater': 'people',
  'scene:/metresAcross': 'metres',
  'scene:/topBearing': 'degrees',
  'scene:/windFrom': 'degrees',
  'scene:/currentToward': 'degrees',
  'scene:/marks/*/across': 'sheet',
  'scene:/marks/*/up': 'sheet',
  'scene:/lines/*/points': 'sheet',
  'scene:/marks/*/heading': 'degrees',
  'emergency-response:/headcountExpected': 'people',
  'emergency-response:/headcountFound': 'people',
  'craft:/craft/*/aboard': 'people',
  'craft:/craft/*/beingTowed': 'people',
  'people:/people/*/age': 'years',
  'people:/people/*/incapacitatedHours': 'hours',
  'damage:/lines/*/amount': 'dollars',
  'damage:/lines/*/material': 'dollars',
  'damage:/lines/*/labour': 'dollars',
  'damage:/money/*/amount': 'dollars',
  'damage:/daysOutOfService': 'days',
  'damage:/outOfService/*/days': 'days',
  'rental:/renterAge': 'years',
  'rental:/operators/*/age': 'years',
  'rental:/earlierRentals': 'times',
  'rental:/gear/*/count': 'pieces',
};
