import { valueOf } from '../../../shared/call/known.js';
import type { RecordSections } from '../../../shared/record/incident-record.js';
import type { PersonRecord } from '../../../shared/record/people-section.js';
import type { OfficerSheet } from '../../../shared/record/response-sections.js';
import { formatPosition } from '../../../shared/place/format-position.js';
import { ourCraftOf, lineOf, operatorsOf, ridersOf, type OurCraft } from './our-craft.js';
import type { FleetCraft } from './read-record.js';

type Sections = Partial<RecordSections>;

/** Of a line in the record, in characters. */
const LONGEST_LINE = 500;

/** Each craft of ours with what an officer asks about it. */
export interface CraftSheet {
  readonly craft: OurCraft;
  /** Name, address, telephone of each who drove; empty where somebody's name is not written down. */
  readonly operators: readonly string[];
  /** Names alone. */
  readonly riders: readonly string[];
  readonly aboard: number | null;
  readonly agreement: string | null;
}

export interface PlaceSheet {
  /** In degrees and minutes, as charts and radios say it. */
  readonly position: string | null;
  /** The same in decimal degrees, as dispatchers type it. */
  readonly decimals: string | null;
  readonly words: string | null;
}

/**
 * What an officer asks at the scene, and no more. Injuries, treatment, hospital and dates of birth stay off it: an officer
 * who needs them asks the person, and nothing here may be read over a shoulder. The one exception is who died or is
 * missing, as 33 CFR 173.53(a) has that told to the authority at once, by name.
 */
export function craftSheets(sections: Sections, fleet: readonly FleetCraft[]): CraftSheet[] {
  return ourCraftOf(sections, fleet).map((craft) => {
    const inRecord = sections.craft?.craft?.find(({ id }) => id === craft.id);
    return {
      craft,
      operators: operatorsOf(craft, sections).map(nameAndReach),
      riders: ridersOf(craft, sections).map(nameOf),
      aboard: valueOf(inRecord?.aboard) ?? null,
      agreement: sections.rental?.agreement ?? null,
    };
  });
}

export function placeSheet({ 'time-and-place': place = {}, call }: Sections): PlaceSheet {
  const position = valueOf(place.position);
  return {
    position:
      position === undefined
        ? null
        : formatPosition(position.latitude, position.longitude, 'degrees-minutes', 2),
    decimals:
      position === undefined
        ? null
        : formatPosition(position.latitude, position.longitude, 'decimal-degrees'),
    words: lineOf(
      valueOf(place.description) ?? valueOf(call?.happenedWhere),
      valueOf(place.waterBody),
      valueOf(place.nearestTown),
      valueOf(place.county),
      valueOf(place.states)?.join(' or '),
    ),
  };
}

/** Who died, and who is not back: what the authority is told at once (33 CFR 173.53(a)). */
export function deadOrMissing({ people }: Sections): { dead: string[]; missing: string[] } {
  const named = (...outcomes: string[]): string[] =>
    (people?.people ?? []).filter(({ outcome }) => outcomes.includes(valueOf(outcome) ?? '')).map(nameOf);
  return { dead: named('died'), missing: named('missing', 'not-back') };
}

/** What goes into the record of it: the sheet as it stood when it was given. */
export function sheetAsGiven({ craft, operators, riders, agreement }: CraftSheet): OfficerSheet {
  const operator = operators.filter(Boolean).join('; ').slice(0, LONGEST_LINE);
  const named = riders.filter(Boolean);
  return {
    ...(craft.owner !== null && { owner: craft.owner.slice(0, LONGEST_LINE) }),
    ...(craft.hullNumber !== null && { hullNumber: craft.hullNumber }),
    ...(craft.registrationNumber !== null && { registrationNumber: craft.registrationNumber }),
    ...(operator !== '' && { operator }),
    ...(named.length > 0 && { riders: named }),
    ...(agreement !== null && { agreement }),
    ...(craft.insurer !== null && { insurer: craft.insurer }),
  };
}

/** Name and address of each who drove: what 46 U.S.C. 2303(a)(2) has the other side told. No telephone, no age. */
export function namesAndAddresses(craft: OurCraft, sections: Sections): string[] {
  return operatorsOf(craft, sections).map(({ name, address }) => lineOf(name, address) ?? '');
}

const nameOf = ({ name }: PersonRecord): string => name ?? '';

const nameAndReach = ({ name, address, phone }: PersonRecord): string => lineOf(name, address, phone) ?? '';
