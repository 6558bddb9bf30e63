import { jsonPointer } from '../kernel/json-pointer.js';
import { allOf, anyOf, truthOf, type Ternary, type Truth } from '../kernel/truth.js';
import type { OpenPoint } from '../law/finding.js';
import type { IncidentFacts, Vessel } from '../record/incident-facts.js';

/** One condition of a duty's reach; a duty applies when all of them hold. */
export interface ScopePart {
  readonly name: string;
  readonly value: Truth;
  readonly text: string;
  readonly citation: string | null;
  /** `proves` and `denies` speak of this part. */
  readonly open: readonly OpenPoint[];
}

/** A part that one fact of the whole occurrence answers. */
export function factPart(
  name: string,
  fact: keyof IncidentFacts,
  value: Truth,
  words: { text: string; question: string },
  citation: string | null = null,
): ScopePart {
  const point = { fact: `/${fact}`, text: words.question, proves: true, denies: true };
  return { name, value, text: words.text, citation, open: value === 'unknown' ? [point] : [] };
}

/** One fact about a vessel on which a part depends, and which answer lets the vessel in. */
export interface VesselCondition {
  readonly member: keyof Vessel;
  readonly value: Truth;
  readonly question: string;
}

/** A yes-or-no fact as a condition: `wanted` is the answer that lets the vessel in. */
export function vesselCondition(
  vessel: Vessel,
  member: 'numbered' | 'motorized' | 'inspected' | 'documented',
  wanted: Exclude<Ternary, 'unknown'>,
): VesselCondition {
  const value = truthOf(vessel[member]);
  return {
    member,
    value: wanted === 'yes' ? value : value === 'unknown' ? value : value === 'true' ? 'false' : 'true',
    question: `Is ${vessel.id} ${VESSEL_WORDS[member]}?`,
  };
}

const VESSEL_WORDS = {
  numbered: 'numbered by a state',
  motorized: 'fitted with a motor',
  inspected: 'subject to federal inspection (46 U.S.C. chapter 33)',
  documented: 'federally documented',
} as const;

/** A part that holds when some vessel meets all of its conditions; with no vessel listed it is not known. */
export function vesselPart(
  name: string,
  text: string,
  vessels: readonly Vessel[],
  conditionsOf: (vessel: Vessel) => readonly VesselCondition[],
  citation: string | null = null,
): ScopePart {
  if (vessels.length === 0) {
    const point = { fact: '/vessels', text: 'Which craft were involved?', proves: true, denies: true };
    return { name, value: 'unknown', text, citation, open: [point] };
  }
  const readings = vessels.map((vessel) => {
    const conditions = conditionsOf(vessel);
    return { conditions, value: allOf(conditions.map(({ value }) => value)) };
  });
  const value = anyOf(readings.map((reading) => reading.value));
  const undecided = readings.filter((reading) => reading.value === 'unknown').length;
  const open = readings.flatMap((reading, index) => {
    if (value !== 'unknown' || reading.value !== 'unknown') return [];
    const unknowns = reading.conditions.filter((condition) => condition.value === 'unknown');
    return unknowns.map((condition) => ({
      fact: jsonPointer(['vessels', index, condition.member]),
      text: condition.question,
      proves: unknowns.length === 1,
      denies: undecided === 1,
    }));
  });
  return { name, value, text, citation, open };
}
