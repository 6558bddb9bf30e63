import type { Geography } from '../place/geography.js';
import type { Place } from '../record/incident-facts.js';
import type { CandidateState } from './determination.js';

/** A line this near may be on the other side: boundary data errs by up to 300 m, positions by their accuracy. */
const NEAR_LINE_M = 1_000;
/** Off every shore a state's waters may still reach this far (12 nautical miles, rounded down from 22,224 m). */
const OFF_SHORE_M = 22_000;

/** The candidate states, and those among them that only a person can confirm. */
export interface ChosenStates {
  readonly states: readonly CandidateState[];
  /** Chosen only because the position lies in no state and off their shore. */
  readonly offShore: ReadonlySet<string>;
}

/** Stated states and the position joined, in the order stated, inside, nearest; no place at all gives none. */
export function chooseStates(place: Place, geography: Geography): ChosenStates {
  const stated = place.states ?? [];
  const found = find(place, geography);
  const distances = new Map(found.map(({ state, distanceToLineM }) => [state, distanceToLineM]));
  const states: CandidateState[] = [
    ...stated.map((state) => ({
      state,
      chosenBy: 'stated' as const,
      distanceToLineM: distances.get(state) ?? null,
    })),
    ...found.filter(({ state }) => !stated.includes(state)),
  ];
  const inside = found.some(({ chosenBy }) => chosenBy === 'position-inside');
  const offShore = inside ? [] : found.map(({ state }) => state).filter((state) => !stated.includes(state));
  return { states, offShore: new Set(offShore) };
}

function find(place: Place, geography: Geography): CandidateState[] {
  const { latitude, longitude, accuracyM = 0 } = place;
  if (latitude === undefined || longitude === undefined) return [];
  const nearLine = NEAR_LINE_M + accuracyM;
  const { inside, near } = geography.statesNear(latitude, longitude, Math.max(nearLine, OFF_SHORE_M));
  const within = inside === null ? Math.max(nearLine, OFF_SHORE_M) : nearLine;
  return [
    ...(inside === null ? [] : [candidate(inside.state, 'position-inside', inside.distanceM)]),
    ...near
      .filter(({ distanceM }) => distanceM <= within)
      .map(({ state, distanceM }) => candidate(state, 'position-near-line', distanceM)),
  ];
}

function candidate(state: string, chosenBy: CandidateState['chosenBy'], distanceM: number): CandidateState {
  return { state, chosenBy, distanceToLineM: Math.round(distanceM) };
}
