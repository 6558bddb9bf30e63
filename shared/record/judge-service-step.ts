import type { Hold, ServiceState } from './follow-service.js';
import { mayRelease, type Refusal, refuseStanding, releaseRule } from './may-release.js';
import { STANDINGS, type ServiceStep, type ServiceStepKind, type Standing } from './service-step.js';

type Part = 'hold' | 'custody' | 'engine';
type Position = 'none' | 'open' | 'released' | 'ours' | 'agency' | 'may-start' | 'must-not-start';

interface Move {
  /** Which of the three small machines of a craft the step moves. */
  readonly part: Part;
  /** Where it may stand before. */
  readonly from: readonly Position[];
  /** Who takes the step, at least; a release asks for more by its own rule. */
  readonly by: Standing;
}

/** The machines as data: each craft has one hold for each incident, one custody and one engine. */
const MOVES: Readonly<Record<ServiceStepKind, Move>> = {
  'taken-out': { part: 'hold', from: ['none', 'released'], by: 'staff' },
  weighed: { part: 'hold', from: ['open', 'released'], by: 'staff' },
  photographed: { part: 'hold', from: ['open'], by: 'staff' },
  cleared: { part: 'hold', from: ['open'], by: 'manager' },
  released: { part: 'hold', from: ['open'], by: 'shift-lead' },
  'not-concerned': { part: 'hold', from: ['open'], by: 'staff' },
  'held-by-agency': { part: 'custody', from: ['ours'], by: 'staff' },
  'returned-by-agency': { part: 'custody', from: ['agency'], by: 'staff' },
  'do-not-start': { part: 'engine', from: ['may-start', 'must-not-start'], by: 'staff' },
  'start-allowed': { part: 'engine', from: ['must-not-start'], by: 'shift-lead' },
};

const REFUSED: Readonly<Record<Position, string>> = {
  none: 'Nothing keeps the craft in for that.',
  open: 'The craft is out of service for that already.',
  released: 'The craft was released from that already.',
  ours: 'No agency holds the craft.',
  agency: 'An agency holds the craft already.',
  'may-start': 'The engine may be started already.',
  'must-not-start': 'The engine must not be started.',
};

/**
 * Every reason against a step as the craft stands; none when it may be taken.
 * @example judgeServiceStep(followService([]), { kind: 'start-allowed', reason: 'dry' }, 'manager', null)[0]?.detail
 * // 'The engine may be started already.'
 */
export function judgeServiceStep(
  state: ServiceState,
  step: ServiceStep,
  by: Standing,
  ownerAmountCents: number | null,
): Refusal[] {
  const { part, from, by: needed } = MOVES[step.kind];
  const position = positionOf(state, part, step);
  if (!from.includes(position)) return [{ code: 'NOT_NOW', detail: REFUSED[position] }];
  if (step.kind === 'released') {
    const hold = holdOf(state, step.incident);
    if (hold === undefined) return [];
    return mayRelease({ state, hold, by, photographs: step.photographs, ownerAmountCents });
  }
  if (step.kind === 'start-allowed') return judgeStart(state, by, ownerAmountCents);
  return refuseStanding(by, needed);
}

/** Starting an engine changes what it remembers: while a hold asks for clearance, so does starting. */
function judgeStart(state: ServiceState, by: Standing, ownerAmountCents: number | null): Refusal[] {
  const refusals: Refusal[] = [];
  let needed: Standing = MOVES['start-allowed'].by;
  for (const hold of state.holds) {
    const rule = releaseRule(hold, ownerAmountCents);
    if (STANDINGS.indexOf(rule.by) > STANDINGS.indexOf(needed)) needed = rule.by;
    if (rule.clearance && hold.clearances.length === 0) {
      const detail = `${rule.because} Record the clearance of counsel or the insurer first.`;
      refusals.push({ code: 'CLEARANCE_MISSING', detail });
    }
  }
  return [...refusals, ...refuseStanding(by, needed)];
}

function positionOf(state: ServiceState, part: Part, step: ServiceStep): Position {
  switch (part) {
    case 'custody':
      return state.heldByAgency === null ? 'ours' : 'agency';
    case 'engine':
      return state.doNotStart.length === 0 ? 'may-start' : 'must-not-start';
    case 'hold': {
      const incident = 'incident' in step ? step.incident : null;
      if (holdOf(state, incident) !== undefined) return 'open';
      return state.released.some((before) => before.incident === incident) ? 'released' : 'none';
    }
  }
}

function holdOf(state: ServiceState, incident: string | null): Hold | undefined {
  return state.holds.find((hold) => hold.incident === incident);
}
