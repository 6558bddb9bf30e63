import { jsonPointer } from '../kernel/json-pointer.js';
import { anyOf, truthOf, type Truth } from '../kernel/truth.js';
import type { OpenPoint } from '../law/finding.js';
import type { CharterSigns, IncidentFacts, Vessel } from '../record/incident-facts.js';
import type { ScopePart } from './scope-part.js';

/** Uses of a craft that are never recreation. */
export const COMMERCIAL_USES: readonly Vessel['use'][] = [
  'passenger-for-hire',
  'staff-operated',
  'other-commercial',
];

const ROUTE = '46 CFR 26.03-5(b)';

/**
 * Whether some vessel is on the commercial route of 46 CFR part 4: one that is subject to inspection, or a documented
 * one in commercial service. An undocumented vessel that is not inspected reports under 33 CFR part 173 instead
 * (46 CFR 26.03-5(b)). What makes a rental a charter with crew is for counsel: the signs only ask.
 */
export function commercialServicePart(facts: Pick<IncidentFacts, 'vessels'>): ScopePart {
  const text =
    'Some vessel is subject to federal inspection, or is documented and in commercial service; an undocumented vessel that is not inspected reports under 33 CFR part 173 instead.';
  const part = { name: 'commercial-service', text, citation: ROUTE };
  if (facts.vessels.length === 0) {
    const open = [{ fact: '/vessels', text: 'Which craft were involved?', proves: true, denies: true }];
    return { ...part, value: 'unknown', open };
  }
  const readings = facts.vessels.map(readService);
  const value = anyOf(readings.map((reading) => reading.value));
  const undecided = readings.filter((reading) => reading.value === 'unknown').length;
  const open = value === 'unknown' ? readings.flatMap((reading) => reading.open) : [];
  return {
    ...part,
    value,
    open: open.map((point) => ({ ...point, denies: point.denies && undecided === 1 })),
  };
}

interface Service {
  readonly value: Truth;
  readonly open: readonly OpenPoint[];
}

/** One vessel: inspected, or documented and in commercial service. */
export function readService(vessel: Vessel, index: number): Service {
  const inspected = truthOf(vessel.inspected);
  const documented = truthOf(vessel.documented);
  if (inspected === 'true') return { value: 'true', open: [] };
  const commercial = readCommercial(vessel, index);
  const route: Truth =
    documented === 'false' || commercial.value === 'false'
      ? 'false'
      : documented === 'true'
        ? commercial.value
        : 'unknown';
  const value = anyOf([inspected, route]);
  if (value !== 'unknown') return { value, open: [] };
  const uninspected = inspected === 'false';
  const open: OpenPoint[] = [];
  if (inspected === 'unknown') {
    const text = `Is ${vessel.id} subject to federal inspection (46 U.S.C. chapter 33)?`;
    open.push(point(index, ['inspected'], text, true, route === 'false'));
  }
  if (documented === 'unknown' && commercial.value !== 'false') {
    const text = `Is ${vessel.id} federally documented?`;
    open.push(point(index, ['documented'], text, commercial.value === 'true', uninspected));
  }
  if (documented !== 'false') {
    open.push(
      ...commercial.open.map((one) => ({
        ...one,
        proves: one.proves && documented === 'true',
        denies: one.denies && uninspected,
      })),
    );
  }
  return { value, open };
}

/** Each sign, what is asked, and which answer points away from a bareboat rental (Coast Guard guidance). */
const SIGNS: readonly [keyof CharterSigns, string, 'yes' | 'no'][] = [
  ['crewSupplied', 'Did the business supply a crew or an operator for', 'yes'],
  ['ownerMayRefuseCrew', 'May the business refuse whom the renter takes as crew of', 'yes'],
  ['ownerAboard', 'Was the owner, or somebody for the owner, aboard', 'yes'],
  ['renterPaysFuel', 'Does the renter pay fuel and stores of', 'no'],
  ['renterInsures', 'Does the renter insure', 'no'],
  ['surveyedBeforeAndAfter', 'Was there a survey before and after the rental of', 'no'],
];

/** Commercial service: true and false by the stated use; with signs of a charter, a question for counsel. */
function readCommercial(vessel: Vessel, index: number): Service {
  if (COMMERCIAL_USES.includes(vessel.use)) return { value: 'true', open: [] };
  const { id, charter, passengersForHire } = vessel;
  const counsel: OpenPoint = {
    fact: null,
    text: `Was ${id} let bareboat, or did it carry passengers for hire? The signs weigh and none decides: ask counsel (46 U.S.C. 2101; Coast Guard guidance).`,
    proves: true,
    denies: true,
  };
  const against = SIGNS.some(([sign, , away]) => charter?.[sign] === away);
  if (passengersForHire === 'yes' || against) return { value: 'unknown', open: [counsel] };
  const open =
    charter === undefined
      ? []
      : SIGNS.filter(([sign]) => truthOf(charter[sign]) === 'unknown').map(([sign, words]) =>
          point(index, ['charter', sign], `${words} ${id}?`, false),
        );
  if (passengersForHire === 'unknown') {
    const text = `Did anyone aboard ${id} pay, or give anything else, to be carried?`;
    open.push(point(index, ['passengersForHire'], text, false));
  }
  const [only, ...more] = open;
  if (only === undefined) return { value: 'false', open: [] };
  return { value: 'unknown', open: more.length === 0 ? [{ ...only, denies: true }] : open };
}

function point(
  index: number,
  members: readonly string[],
  text: string,
  proves: boolean,
  denies = false,
): OpenPoint {
  return { fact: jsonPointer(['vessels', index, ...members]), text, proves, denies };
}
