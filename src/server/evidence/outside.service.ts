import { Injectable } from '@nestjs/common';
import { listOutsideEvidenceGaps } from '../../../shared/record/evidence-outside-gaps.js';
import type { OutsideEvidence } from '../../../shared/record/evidence-section.js';
import { OutsideEvidenceDto } from '../../../shared/wire/evidence-outside.dto.js';
import { AsOfDto } from '../../../shared/wire/record-queries.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { EvidenceAccess } from './evidence-access.js';
import { OutsideItems } from './evidence-lists.js';

export interface OutsideView extends OutsideEvidence {
  /** What is to be done before it is gone. */
  readonly gaps: readonly string[];
}

/** Evidence that others hold: the soonest overwritten comes first. */
@Injectable()
export class OutsideService {
  constructor(
    private readonly items: OutsideItems,
    private readonly access: EvidenceAccess,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  async list(incidentId: string, query: unknown, actor: Actor): Promise<{ items: OutsideView[] }> {
    const { at } = readInput(readRecordInput(AsOfDto, query), 'query');
    await this.access.read(incidentId, actor);
    const items = await this.items.all(incidentId, at);
    return { items: items.sort(soonestFirst).map((item) => this.view(item, at)) };
  }

  async add(incidentId: string, body: unknown, key: string | undefined, actor: Actor): Promise<OutsideView> {
    const input = readInput(readRecordInput(OutsideEvidenceDto, body));
    const request = {
      operation: 'outside-evidence',
      key: readIdempotencyKey(key),
      body: { incidentId, body },
    };
    return this.items.run(async () => {
      await this.access.add(incidentId, actor);
      const { id } = await this.createOnce.run(request, (made) =>
        this.items.add(incidentId, { id: made, version: 1, ...input }, actor),
      );
      return this.view(await this.items.get(incidentId, id));
    });
  }

  async replace(
    incidentId: string,
    id: string,
    body: unknown,
    ifMatch: string | undefined,
    actor: Actor,
  ): Promise<OutsideView> {
    const input = readInput(readRecordInput(OutsideEvidenceDto, body));
    return this.items.run(async () => {
      await this.access.read(incidentId, actor);
      const { version, ...before } = await this.items.get(incidentId, id);
      assertFresh(ifMatch, { version, ...before }, input);
      return this.view(await this.items.replace(incidentId, { id, version, ...input }, actor));
    });
  }

  private view(item: OutsideEvidence, at = this.clock.now()): OutsideView {
    return { ...item, gaps: listOutsideEvidenceGaps(item, Date.parse(at)) };
  }
}

function soonestFirst(one: OutsideEvidence, other: OutsideEvidence): number {
  return (
    Date.parse(one.overwrittenAt ?? '9999-12-31T00:00:00Z') -
    Date.parse(other.overwrittenAt ?? '9999-12-31T00:00:00Z')
  );
}
