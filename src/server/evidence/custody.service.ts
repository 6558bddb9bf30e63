import { Injectable } from '@nestjs/common';
import { listEvidenceCustodyGaps } from '../../../shared/record/evidence-custody-gaps.js';
import type { CustodyItem } from '../../../shared/record/evidence-section.js';
import { CustodyItemDto, HandOverDto } from '../../../shared/wire/evidence-custody.dto.js';
import { AsOfDto } from '../../../shared/wire/record-queries.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import type { Actor } from '../accounts/accounts.api.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { EvidenceAccess } from './evidence-access.js';
import { CustodyItems } from './evidence-lists.js';

export interface CustodyView extends CustodyItem {
  /** What somebody on the other side would ask. */
  readonly gaps: readonly string[];
}

/** Things kept as evidence, and who had them when. */
@Injectable()
export class CustodyService {
  constructor(
    private readonly items: CustodyItems,
    private readonly access: EvidenceAccess,
    private readonly createOnce: CreateOnce,
  ) {}

  async list(incidentId: string, query: unknown, actor: Actor): Promise<{ items: CustodyView[] }> {
    const { at } = readInput(readRecordInput(AsOfDto, query), 'query');
    await this.access.read(incidentId, actor);
    return { items: (await this.items.all(incidentId, at)).map(view) };
  }

  async add(incidentId: string, body: unknown, key: string | undefined, actor: Actor): Promise<CustodyView> {
    const input = readInput(readRecordInput(CustodyItemDto, body));
    const request = { operation: 'custody-item', key: readIdempotencyKey(key), body: { incidentId, body } };
    return this.items.run(async () => {
      await this.access.add(incidentId, actor);
      const { id } = await this.createOnce.run(request, (made) =>
        this.items.add(incidentId, { id: made, version: 1, ...input }, actor),
      );
      return view(await this.items.get(incidentId, id));
    });
  }

  /** Adds a hand-over at the end; what was entered before stays as it is. */
  async handOver(
    incidentId: string,
    itemId: string,
    body: unknown,
    key: string | undefined,
    actor: Actor,
  ): Promise<CustodyView> {
    const input = readInput(readRecordInput(HandOverDto, body));
    const request = {
      operation: 'hand-over',
      key: readIdempotencyKey(key),
      body: { incidentId, itemId, body },
    };
    return this.items.run(async () => {
      await this.access.add(incidentId, actor);
      await this.createOnce.run(request, async (id) => {
        const item = await this.items.get(incidentId, itemId);
        const handOvers = [...(item.handOvers ?? []), { id, ...input }];
        await this.items.replace(incidentId, { ...item, handOvers }, actor);
      });
      return view(await this.items.get(incidentId, itemId));
    });
  }
}

function view(item: CustodyItem): CustodyView {
  return { ...item, gaps: listEvidenceCustodyGaps(item) };
}
