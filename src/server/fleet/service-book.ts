import { randomUUID } from 'node:crypto';
import { followService, type Hold, type ServiceState } from '../../../shared/record/follow-service.js';
import { judgeServiceStep } from '../../../shared/record/judge-service-step.js';
import {
  mayRelease,
  type Refusal,
  type ReleaseRule,
  releaseRule,
} from '../../../shared/record/may-release.js';
import { listCustodyGaps } from '../../../shared/record/list-custody-gaps.js';
import type { ServiceStep, Standing } from '../../../shared/record/service-step.js';
import { type Gravity, weighConsequence } from '../../../shared/record/weigh-consequence.js';
import type { Page } from '../../../shared/wire/page-query.dto.js';
import { readPageQuery } from '../../../shared/wire/page-query.dto.js';
import { readServiceStep, type SentStep } from '../../../shared/wire/read-service-step.js';
import type { Actor } from '../accounts/accounts.api.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { byOf, shownBy } from './by-of.js';
import type { CraftRow } from './database/craft.row.js';
import type { KeptThings } from './database/kept-things.js';
import type { ReleaseAmounts } from './database/release-amounts.js';
import type { ServiceSteps } from './database/service-steps.js';
import type { ServiceStepRow } from './database/service-step.row.js';
import type { StationRow } from './database/station.row.js';
import type { KeptParts } from './kept.service.js';
import type { Standings } from './standings.js';

export interface ServiceBookParts extends KeptParts {
  readonly craft: KeptThings<CraftRow>;
  readonly stations: KeptThings<StationRow>;
  readonly steps: ServiceSteps;
  readonly amounts: ReleaseAmounts;
  readonly standings: Standings;
}

/** A hold, with what its release takes and what stands against it for whoever asks. */
export type ShownHold = Hold & {
  readonly gravity: Gravity | null;
  readonly needs: ReleaseRule;
  readonly against: readonly Refusal[];
};

export interface ShownService extends Omit<ServiceState, 'holds'> {
  readonly craft: string;
  readonly holds: readonly ShownHold[];
  /** What is still to be asked of the agency that holds it. */
  readonly custodyGaps: readonly string[];
}

/** The service of craft as a book of steps: nothing in it is changed, and each step is judged before it is added. */
export class ServiceBook {
  constructor(private readonly parts: ServiceBookParts) {}

  async read(craftId: string, actor: Actor): Promise<ShownService> {
    const craft = await this.found(craftId);
    const { holds, ...state } = await this.stateOf(craftId);
    const by = await this.standing(actor, craft);
    const ownerAmountCents = await this.ownerAmount();
    const shown = holds.map((hold): ShownHold => {
      const question = { state: { holds, ...state }, hold, by, photographs: [], ownerAmountCents };
      const gravity = hold.incident === null ? null : weighConsequence(hold.consequence);
      return { ...hold, gravity, needs: releaseRule(hold, ownerAmountCents), against: mayRelease(question) };
    });
    const custodyGaps = state.heldByAgency === null ? [] : listCustodyGaps(state.heldByAgency);
    return { craft: craftId, ...state, holds: shown, custodyGaps };
  }

  async stateOf(craftId: string): Promise<ServiceState> {
    return followService(await this.parts.steps.of(craftId));
  }

  async page(craftId: string, query: unknown): Promise<Page<object>> {
    const request = pageRequest(readInput(readPageQuery(query), 'query'));
    await this.found(craftId);
    const rows = await this.parts.steps.page(craftId, request);
    const { items, next } = pageOf(rows, request, ({ sequence, id }) => ({ sort: String(sequence), id }));
    return { items: items.map(showStep), next };
  }

  /** Adds the step that somebody sent. */
  async take(craftId: string, body: unknown, key: string | undefined, actor: Actor): Promise<object> {
    const sent = readInput(readServiceStep(body));
    const request = {
      operation: 'service-step',
      key: readIdempotencyKey(key),
      body: { craftId, body },
    };
    const { id } = await this.parts.createOnce.run(request, (stepId) =>
      this.add(craftId, sent, actor, stepId),
    );
    const row = await this.parts.steps.find(id);
    return row === null ? refuse(404, 'There is no such step.') : showStep(row);
  }

  /**
   * Adds a step if it may be taken as the craft stands; inside a unit of work it becomes a part of that.
   * @throws ProblemException 404 for no craft, 409 with every reason against the step
   */
  add(craftId: string, { at, step }: SentStep, actor: Actor, id: string = randomUUID()): Promise<void> {
    return this.parts.unitOfWork.run(async () => {
      const craft = await this.found(craftId);
      const before = await this.parts.steps.of(craftId);
      const ownerAmountCents = await this.ownerAmount();
      const state = followService(before);
      const by = await this.standing(actor, craft);
      const refusals = judgeServiceStep(state, step, by, ownerAmountCents);
      if (refusals.length > 0) throw new ProblemException(refusedProblem(refusals));
      const told = step.kind === 'released' ? withGrounds(step, state, ownerAmountCents) : step;
      const now = this.parts.clock.now();
      const row = {
        id,
        craftId,
        sequence: before.length + 1,
        kind: step.kind,
        incidentId: 'incident' in step ? step.incident : null,
        at: at ?? now,
        step: told,
        ...byOf(actor, now),
      };
      await this.parts.steps.add(row, followService([...before, told]).inService);
    });
  }

  private async standing(actor: Actor, { stationId }: CraftRow): Promise<Standing> {
    const station = stationId === null ? null : await this.parts.stations.find(stationId);
    return this.parts.standings.of(actor, this.parts.clock.now(), station?.timeZone);
  }

  private async ownerAmount(): Promise<number | null> {
    return (await this.parts.amounts.latest())?.amountCents ?? null;
  }

  private async found(craftId: string): Promise<CraftRow> {
    return (await this.parts.craft.find(craftId)) ?? refuse(404, 'There is no such craft.');
  }
}

/** A release keeps what it was decided on, as both may look different later. */
function withGrounds(
  step: Extract<ServiceStep, { kind: 'released' }>,
  { holds }: ServiceState,
  ownerAmountCents: number | null,
): ServiceStep {
  const hold = holds.find(({ incident }) => incident === step.incident);
  const gravity = hold === undefined || hold.incident === null ? null : weighConsequence(hold.consequence);
  return { ...step, gravity, ownerAmountCents };
}

function refusedProblem(refusals: readonly Refusal[]) {
  return {
    ...problemOfStatus(409),
    type: '/problems/not-as-the-craft-stands',
    title: 'That may not be done as the craft stands',
    source: 'request',
    errors: refusals.map((refusal) => ({ pointer: '', ...refusal })),
  };
}

function showStep(row: ServiceStepRow): object {
  const { id, craftId: craft, sequence, at, step } = row;
  return { id, craft, sequence, at, step, ...shownBy(row) };
}
