import type { Reading } from '../kernel/reading.js';
import type { ServiceStep, ServiceStepKind } from '../record/service-step.js';
import { wordFault } from './declare-fact.js';
import {
  ClearedDto,
  DoNotStartDto,
  HeldByAgencyDto,
  PhotographedDto,
  ReleasedDto,
  ReturnedByAgencyDto,
  StartAllowedDto,
  TakenOutDto,
} from './fleet-service.dto.js';
import { isObject } from './is-object.js';
import type { Shape } from './record-members.js';
import { readRecordInput } from './record-reading.js';

/** A step as somebody sends it; `at` is null where it is now. */
export interface SentStep {
  readonly at: string | null;
  readonly step: ServiceStep;
}

type SentDto =
  | TakenOutDto
  | PhotographedDto
  | ReleasedDto
  | ClearedDto
  | HeldByAgencyDto
  | ReturnedByAgencyDto
  | DoNotStartDto
  | StartAllowedDto;

/** The steps that people take; what an incident came to is told by its record alone. */
export const STEP_SHAPES: Readonly<Record<SentDto['kind'], Shape>> = {
  'taken-out': TakenOutDto,
  photographed: PhotographedDto,
  cleared: ClearedDto,
  released: ReleasedDto,
  'held-by-agency': HeldByAgencyDto,
  'returned-by-agency': ReturnedByAgencyDto,
  'do-not-start': DoNotStartDto,
  'start-allowed': StartAllowedDto,
};

const KINDS = Object.keys(STEP_SHAPES);
const kindFault = wordFault(KINDS, `one of ${KINDS.join(', ')}`);

/**
 * Reads a step of a craft's service by the class of its kind; what was left out of it becomes null.
 * @example readServiceStep({ kind: 'do-not-start', reason: 'fuel in the bilge' })
 * // { ok: true, value: { at: null, step: { kind: 'do-not-start', reason: 'fuel in the bilge' } } }
 */
export function readServiceStep(input: unknown): Reading<SentStep> {
  const kind = isObject(input) && Object.hasOwn(input, 'kind') ? input['kind'] : undefined;
  const fault = kindFault(kind);
  if (fault !== null) return { ok: false, errors: [{ pointer: '/kind', detail: fault }] };
  const reading = readRecordInput(STEP_SHAPES[kind as SentDto['kind']], input);
  if (!reading.ok) return reading;
  const sent = reading.value as SentDto;
  const step = stepOf(sent);
  if (step.kind === 'photographed' && step.photographs.length === 0) {
    return { ok: false, errors: [{ pointer: '/photographs', detail: 'Name at least one photograph.' }] };
  }
  return { ok: true, value: { at: sent.at ?? null, step } };
}

function stepOf(sent: SentDto): ServiceStep & { readonly kind: ServiceStepKind } {
  switch (sent.kind) {
    case 'taken-out':
      return { kind: sent.kind, incident: null, reason: sent.reason };
    case 'photographed':
      return { kind: sent.kind, incident: sent.incident ?? null, photographs: sent.photographs };
    case 'released': {
      const { kind, incident = null, photographs = [], remark = null } = sent;
      return { kind, incident, photographs, remark, gravity: null, ownerAmountCents: null };
    }
    case 'cleared': {
      const { kind, incident, by, person, how, reference = null } = sent;
      return { kind, incident, by, person, how, reference };
    }
    case 'held-by-agency': {
      const { kind, agency, officer = null, badge = null, receipt = null } = sent;
      const { photographs = [], hourMeter = null, keptWhere = null } = sent;
      return { kind, agency, officer, badge, receipt, photographs, hourMeter, keptWhere };
    }
    case 'returned-by-agency': {
      const { kind, handedOverBy = null, receipt = null, photographs = [], hourMeter = null } = sent;
      return { kind, handedOverBy, receipt, photographs, hourMeter };
    }
    case 'do-not-start':
    case 'start-allowed':
      return { kind: sent.kind, reason: sent.reason };
  }
}
