import type { Geography } from '../place/geography.js';
import { singleZoneOf } from '../place/zones-of-states.js';
import type { IncidentFacts } from '../record/incident-facts.js';

/**
 * The zone in which the clocks are read: as given, else of the position, else of a single stated state with
 * one zone, else the fixed offset of `occurredAt` (`Z` as `+00:00`).
 */
export function chooseZone(facts: IncidentFacts, geography: Geography): string {
  const { timeZone, latitude, longitude, states = [] } = facts.place;
  if (timeZone !== undefined) return timeZone;
  if (latitude !== undefined && longitude !== undefined) return geography.zoneAt(latitude, longitude);
  const [only] = states;
  const zone = only !== undefined && states.length === 1 ? singleZoneOf(only) : null;
  return zone ?? offsetOf(facts.occurredAt);
}

function offsetOf(dateTime: string): string {
  return /[+-]\d\d:\d\d$/.exec(dateTime)?.[0] ?? '+00:00';
}
