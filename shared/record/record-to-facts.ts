import { valueOf } from '../call/known.js';
import type { Craft } from './craft-section.js';
import { damageToFacts } from './damage-to-facts.js';
import { definedMembers } from './defined-members.js';
import type {
  Assessment,
  CharterSigns,
  IncidentFacts,
  Place,
  RentalFacts,
  Vessel,
} from './incident-facts.js';
import type { IncidentRecord } from './incident-record.js';
import { personToFacts } from './people-to-facts.js';
import type { RentalSection } from './rental-section.js';
import type { EmergencyResponseSection } from './response-sections.js';
import type { TimeAndPlace } from './time-and-place.js';
import { whenItHappened } from './when-it-happened.js';

/**
 * The record as the determination reads it. What nobody has said stays unknown; where the facts must name something
 * that the record does not (the moment, the use of a craft), the reading under which more is due is taken, and
 * `listAssumptions` says so. The sections have passed their reader; the result passes that of the facts.
 * @example
 * recordToFacts({ incident, sections: { call: { said: 'help, PWC 7' } } })
 * // { schemaVersion: 1, occurredAt: incident.openedAt, …, people: [], peopleAssessment: 'not-yet', damage: [], … }
 */
export function recordToFacts(record: IncidentRecord): IncidentFacts {
  const { incident, sections } = record;
  const { account, authorities, people, damage, craft: { craft = [] } = {} } = sections;
  const foundEmpty = valueOf(sections.call?.overdue?.ended) === 'found-empty';
  const { 'time-and-place': where = {}, 'emergency-response': response } = sections;
  const { occurredAt, occurredUntil, learnedAt } = whenItHappened(record);
  const craftIds = new Set(craft.map(({ id }) => id));
  return definedMembers<IncidentFacts>({
    schemaVersion: 1,
    occurredAt,
    occurredUntil,
    learnedAt,
    place: placeOf(where, incident.timeZone),
    federalWaters: valueOf(where.federalWaters),
    involvesVesselOrEquipment: valueOf(account?.involvesVesselOrEquipment),
    casualtyTypes: valueOf(account?.casualtyTypes) ?? [],
    everyoneAccountedFor: valueOf(people?.everyoneAccountedFor) ?? headcount(response),
    operatorAbleToReport: valueOf(people?.operatorAbleToReport),
    oilSheen: valueOf(account?.oilSheen),
    bridgeStruck: valueOf(account?.bridgeStruck),
    propulsionOrSteeringLost: valueOf(account?.propulsionOrSteeringLost),
    seaworthinessImpaired: valueOf(account?.seaworthinessImpaired),
    vessels: craft.map((one) => vesselOf(one, sections.rental)),
    peopleAssessment: valueOf(people?.assessment) ?? 'not-yet',
    people: (people?.people ?? []).map((person) => personToFacts(person, craftIds, occurredAt, foundEmpty)),
    damageAssessment: assessmentOf(sections),
    damage: (damage?.lines ?? []).map((line) => damageToFacts(line, craftIds)),
    officerAtScene: valueOf(authorities?.officerAtScene),
    officerFiledReport: valueOf(authorities?.officerFiledReport),
    emergencyServicesCalled:
      valueOf(response?.emergencyServicesCalled) ?? valueOf(sections.call?.emergencyServicesTold),
  });
}

/** Fewer found than went out: somebody is not accounted for. As many proves nothing, as the number may be wrong. */
function headcount(response: EmergencyResponseSection = {}): 'no' | undefined {
  const [expected, found] = [valueOf(response.headcountExpected), valueOf(response.headcountFound)];
  return expected !== undefined && found !== undefined && found < expected ? 'no' : undefined;
}

function assessmentOf(sections: IncidentRecord['sections']): Assessment {
  const said = valueOf(sections.damage?.assessment) ?? 'not-yet';
  return said === 'complete' && hasUnlistedFinding(sections) ? 'partial' : said;
}

/** Something new was found at check-in that no damage line puts a figure on: then not all damage is listed. */
export function hasUnlistedFinding({ damage, 'check-in': checkIn }: IncidentRecord['sections']): boolean {
  const lines = new Set((damage?.lines ?? []).map(({ id }) => id));
  return (checkIn?.findings ?? []).some(
    ({ shownAtCheckOut, damageLine }) =>
      valueOf(shownAtCheckOut) !== 'yes' && (damageLine === undefined || !lines.has(damageLine)),
  );
}

function placeOf(where: TimeAndPlace, businessZone: string): Place {
  const position = valueOf(where.position);
  const states = valueOf(where.states);
  const derivable = position !== undefined || (states !== undefined && states.length > 0);
  return definedMembers<Place>({
    latitude: position?.latitude,
    longitude: position?.longitude,
    accuracyM: position?.accuracyM,
    states,
    // Position and state tell the zone by themselves; without either, the clocks of the business are the nearest.
    timeZone: valueOf(where.timeZone) ?? (derivable ? undefined : businessZone),
    description: valueOf(where.description),
  });
}

function vesselOf(craft: Craft, rental: RentalSection | undefined): Vessel {
  return definedMembers<Vessel>({
    id: craft.id,
    use: valueOf(craft.use) ?? cautiousUse(craft),
    ours: craft.ours,
    numbered: valueOf(craft.numbered),
    inspected: valueOf(craft.inspected),
    completeLoss: valueOf(craft.completeLoss),
    aboard: valueOf(craft.aboard),
    stateOfNumber: valueOf(craft.stateOfNumber),
    motorized: valueOf(craft.motorized),
    documented: valueOf(craft.documented),
    passengersForHire: valueOf(craft.passengersForHire),
    charter: charterOf(craft),
    rental: craft.ours === true ? rentalOf(rental) : undefined,
  });
}

/** Absent while nobody has looked at any of the signs. */
function charterOf(craft: Craft): CharterSigns | undefined {
  const signs = definedMembers<CharterSigns>({
    crewSupplied: valueOf(craft.crewSupplied),
    ownerMayRefuseCrew: valueOf(craft.ownerMayRefuseCrew),
    ownerAboard: valueOf(craft.ownerAboard),
    renterPaysFuel: valueOf(craft.renterPaysFuel),
    renterInsures: valueOf(craft.renterInsures),
    surveyedBeforeAndAfter: valueOf(craft.surveyedBeforeAndAfter),
  });
  return Object.keys(signs).length > 0 ? signs : undefined;
}

/** What was agreed, with an extension that was granted; absent while nobody has said when the craft was due back. */
function rentalOf(rental: RentalSection | undefined): RentalFacts | undefined {
  const dueBackAt = valueOf(rental?.extendedUntil) ?? valueOf(rental?.dueBackAt);
  if (dueBackAt === undefined) return undefined;
  return definedMembers<RentalFacts>({ dueBackAt, returnedAt: valueOf(rental?.returnedAt) });
}

/** Both are covered by 33 CFR 173.51: leaving the craft out would let the others decide that no report is due. */
export function cautiousUse({ ours }: Craft): Vessel['use'] {
  return ours === true ? 'rental' : 'recreational';
}
