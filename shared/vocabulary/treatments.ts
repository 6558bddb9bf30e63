import type { Term, TermBasis } from './term.js';

/** A treatment on the closed list of 29 CFR 1904.7(b)(5)(ii). */
export interface FirstAidTreatment extends Term {
  /** Its paragraph in that list, `A` to `N`. */
  readonly letter: string;
}

/** A treatment that is not on the closed list, and so goes beyond first aid. */
export interface BeyondFirstAidTreatment extends Term {
  /** The paragraph that it is easily taken for; null when none comes near. */
  readonly mistakenFor: string | null;
}

/** The closed list: whatever is not on it is not first aid. */
export const FIRST_AID_LIST = '29 CFR 1904.7(b)(5)(ii)';

const CLOSED = `Follows from the list of ${FIRST_AID_LIST} being closed`;

function firstAid(letter: string, slug: string, label: string, definition: string): FirstAidTreatment {
  return {
    slug,
    label,
    definition,
    source: `${FIRST_AID_LIST}(${letter})`,
    basis: 'read',
    definitionBasis: 'read',
    letter,
  };
}

function beyond(
  slug: string,
  label: string,
  definition: string,
  mistakenFor: string | null,
  source: string,
  basis: TermBasis,
): BeyondFirstAidTreatment {
  return { slug, label, definition, source, basis, definitionBasis: basis, mistakenFor };
}

/** The fourteen treatments of the closed list, in its order. */
export const firstAidTreatments: readonly FirstAidTreatment[] = [
  firstAid(
    'A',
    'non-prescription-medicine',
    'Medicine sold without prescription',
    'Taken at the strength sold without a prescription; advice to take it at prescription strength goes beyond.',
  ),
  firstAid('B', 'tetanus-shot', 'Tetanus shot', 'Tetanus only; any other vaccine goes beyond.'),
  firstAid(
    'C',
    'surface-wound-cleaning',
    'Cleaning a surface wound',
    'Washing, flushing or soaking a wound of the skin.',
  ),
  firstAid(
    'D',
    'wound-covering',
    'Covering a wound',
    'Bandage, gauze, adhesive strips or butterfly closure; stitches, staples and glue go beyond.',
  ),
  firstAid('E', 'hot-or-cold-therapy', 'Heat or cold', 'Warm or cold packs, however often.'),
  firstAid(
    'F',
    'non-rigid-support',
    'Soft support',
    'Elastic wrap, soft brace or belt; anything with stiff parts that holds a part of the body still goes beyond.',
  ),
  firstAid(
    'G',
    'immobilisation-for-transport',
    'Holding still for the ride',
    'Splint, sling, collar or board, used only while the person is being moved.',
  ),
  firstAid(
    'H',
    'nail-drilling-or-blister-draining',
    'Drilling a nail or draining a blister',
    'Letting pressure out of a finger or toe nail, or fluid out of a blister.',
  ),
  firstAid('I', 'eye-patch', 'Eye patch', 'A patch over the eye.'),
  firstAid(
    'J',
    'eye-irrigation-or-swab',
    'Rinsing or swabbing the eye',
    'Taking something out of the eye with water or a cotton swab and nothing else.',
  ),
  firstAid(
    'K',
    'simple-splinter-removal',
    'Taking out a splinter',
    'Taking a splinter or the like out of anywhere but the eye by water, tweezers, swab or other simple means.',
  ),
  firstAid('L', 'finger-guard', 'Finger guard', 'A guard over a finger.'),
  firstAid('M', 'massage', 'Massage', 'Massage; physical therapy and chiropractic go beyond.'),
  firstAid(
    'N',
    'fluids-for-heat-stress',
    'Drinking for heat stress',
    'Fluids by mouth; fluids into a vein go beyond.',
  ),
];

/** Common treatments that the closed list leaves out. */
export const beyondFirstAidTreatments: readonly BeyondFirstAidTreatment[] = [
  beyond(
    'sutures-staples-or-glue',
    'Stitches, staples or glue',
    'A wound closed by anything that paragraph (D) does not name.',
    'D',
    FIRST_AID_LIST,
    'read',
  ),
  beyond(
    'prescription-medicine',
    'Prescription medicine',
    'Medicine that needs a prescription, or is advised at prescription strength.',
    'A',
    FIRST_AID_LIST,
    'read',
  ),
  beyond(
    'other-vaccine',
    'Vaccine other than tetanus',
    'For example against hepatitis B or rabies.',
    'B',
    FIRST_AID_LIST,
    'read',
  ),
  beyond(
    'rigid-support-or-cast',
    'Rigid support or cast',
    'A device with stiff parts made to hold a part of the body still, beyond the ride to help.',
    'F',
    FIRST_AID_LIST,
    'read',
  ),
  beyond(
    'physical-therapy',
    'Physical therapy',
    'Physical therapy or chiropractic treatment.',
    'M',
    FIRST_AID_LIST,
    'read',
  ),
  beyond(
    'intravenous-fluids',
    'Fluids into a vein',
    'Given by drip rather than by mouth.',
    'N',
    'Summary of the recordkeeping rule by a federal agency',
    'read-secondary',
  ),
  beyond(
    'oxygen',
    'Oxygen',
    'Oxygen given to breathe, at the scene or later.',
    null,
    `${CLOSED}; a university summary says the same`,
    'read-secondary',
  ),
  beyond(
    'cardiopulmonary-resuscitation',
    'Resuscitation',
    'Chest compressions, rescue breaths or a defibrillator.',
    null,
    CLOSED,
    'memory',
  ),
  beyond('surgery', 'Surgery', 'Any operation.', null, CLOSED, 'memory'),
  beyond(
    'other-treatment',
    'Another treatment',
    'Care to fight an injury or illness that no line of either list names.',
    null,
    CLOSED,
    'memory',
  ),
];

/** Slugs of both lists. */
export const treatmentSlugs: readonly string[] = [...firstAidTreatments, ...beyondFirstAidTreatments].map(
  (term) => term.slug,
);

const onList = new Map(firstAidTreatments.map((term) => [term.slug, term]));
const offList = new Map(beyondFirstAidTreatments.map((term) => [term.slug, term]));

/**
 * Whether the treatment goes beyond first aid: the list is closed, so everything that it does not name does.
 * @example isBeyondFirstAid('oxygen') // true
 * @example isBeyondFirstAid('tetanus-shot') // false
 */
export function isBeyondFirstAid(slug: string): boolean {
  return !onList.has(slug);
}

/** `findFirstAid('massage')?.letter` is `'M'`. */
export function findFirstAid(slug: string): FirstAidTreatment | undefined {
  return onList.get(slug);
}

/** `findBeyondFirstAid('oxygen')?.label` is `'Oxygen'`. */
export function findBeyondFirstAid(slug: string): BeyondFirstAidTreatment | undefined {
  return offList.get(slug);
}
