import type { IncidentFacts } from '../record/incident-facts.js';
import { readInstant } from '../time/read-instant.js';
import type { ZoneClock } from '../time/zone-clock.js';

/** The facts with their instants read once, and the clock of the place. Instants are epoch milliseconds. */
export interface Occurrence {
  readonly facts: IncidentFacts;
  readonly clock: ZoneClock;
  readonly occurredAt: number;
  /** Both ends of the span in which it happened, or the one instant. */
  readonly ends: readonly number[];
  readonly learnedAt: number;
  /** `YYYY-MM-DD` at the place. */
  readonly localDate: string;
}

/** Reads the instants of checked facts: a span that is not known has one end, a first knowledge that is not known is the occurrence. */
export function readOccurrence(facts: IncidentFacts, clock: ZoneClock): Occurrence {
  const occurredAt = readInstant(facts.occurredAt);
  return {
    facts,
    clock,
    occurredAt,
    ends: facts.occurredUntil ? [occurredAt, readInstant(facts.occurredUntil)] : [occurredAt],
    learnedAt: facts.learnedAt ? readInstant(facts.learnedAt) : occurredAt,
    localDate: clock.localDate(occurredAt),
  };
}
