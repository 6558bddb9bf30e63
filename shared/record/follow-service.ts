import type { ClearanceStep, HeldByAgencyStep, ServiceStep } from './service-step.js';
import {
  type Consequence,
  type Gravity,
  isGraver,
  NOTHING_KNOWN,
  weighConsequence,
} from './weigh-consequence.js';

/** A reason to keep a craft in: an incident, or upkeep (null). */
export interface Hold {
  readonly incident: string | null;
  readonly reason: string;
  readonly consequence: Consequence;
  readonly photographs: readonly string[];
  /** Only those that were given knowing what is known now. */
  readonly clearances: readonly ClearanceStep[];
}

export interface ServiceState {
  /** Nothing keeps it in: no hold, no agency, no engine that must not be started. */
  readonly inService: boolean;
  readonly holds: readonly Hold[];
  /** Incidents that the craft was released from, with what they were taken for then. */
  readonly released: readonly { readonly incident: string; readonly gravity: Gravity }[];
  readonly heldByAgency: HeldByAgencyStep | null;
  readonly doNotStart: readonly string[];
}

type Parts = Omit<ServiceState, 'inService'>;

const AT_THE_DOCK: Parts = { holds: [], released: [], heldByAgency: null, doNotStart: [] };

/**
 * What the steps of a craft come to. The steps were judged when they were added; here they are followed as they stand.
 * @example followService([{ kind: 'do-not-start', reason: 'water in the engine' }]).inService // false
 */
export function followService(steps: readonly ServiceStep[]): ServiceState {
  const parts = steps.reduce(follow, AT_THE_DOCK);
  const { holds, heldByAgency, doNotStart } = parts;
  return { inService: holds.length === 0 && heldByAgency === null && doNotStart.length === 0, ...parts };
}

function follow(parts: Parts, step: ServiceStep): Parts {
  switch (step.kind) {
    case 'taken-out':
      return takeOut(parts, step.incident, step.reason);
    case 'weighed':
      return weigh(parts, step.incident, step.consequence);
    case 'photographed':
      return changeHold(parts, step.incident, (hold) => ({
        ...hold,
        photographs: [...hold.photographs, ...step.photographs],
      }));
    case 'cleared':
      return changeHold(parts, step.incident, (hold) => ({
        ...hold,
        clearances: [...hold.clearances, step],
      }));
    case 'released': {
      const without = dropHold(parts, step.incident);
      if (step.incident === null) return without;
      const { incident, gravity } = step;
      return { ...without, released: [...without.released, { incident, gravity: gravity ?? 'unclear' }] };
    }
    case 'not-concerned':
      return dropHold(parts, step.incident);
    case 'held-by-agency':
      return { ...parts, heldByAgency: step };
    case 'returned-by-agency':
      return { ...parts, heldByAgency: null };
    case 'do-not-start':
      return { ...parts, doNotStart: [...parts.doNotStart, step.reason] };
    case 'start-allowed':
      return { ...parts, doNotStart: [] };
  }
}

function takeOut(parts: Parts, incident: string | null, reason: string): Parts {
  const hold = { incident, reason, consequence: NOTHING_KNOWN, photographs: [], clearances: [] };
  const released = parts.released.filter((before) => before.incident !== incident);
  return { ...parts, released, holds: [...parts.holds, hold] };
}

/** A clearance was given on what was known then: it ends when the incident turns out to be graver. */
function weigh(parts: Parts, incident: string, consequence: Consequence): Parts {
  const now = weighConsequence(consequence);
  return changeHold(parts, incident, (hold) => ({
    ...hold,
    consequence,
    clearances: isGraver(now, weighConsequence(hold.consequence)) ? [] : hold.clearances,
  }));
}

function changeHold(parts: Parts, incident: string | null, change: (hold: Hold) => Hold): Parts {
  return { ...parts, holds: parts.holds.map((hold) => (hold.incident === incident ? change(hold) : hold)) };
}

function dropHold(parts: Parts, incident: string | null): Parts {
  return { ...parts, holds: parts.holds.filter((hold) => hold.incident !== incident) };
}
