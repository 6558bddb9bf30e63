import { ReleaseAmountDto } from '../../../shared/wire/fleet-requests.dto.js';
import { readFleetInput } from '../../../shared/wire/fleet-values.js';
import { readPageQuery, type Page } from '../../../shared/wire/page-query.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import { pageOf, pageRequest } from '../platform/http/cursor.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { byOf } from './by-of.js';
import type { ReleaseAmountRow } from './database/release-amount.row.js';
import type { ReleaseAmounts } from './database/release-amounts.js';
import type { KeptParts } from './kept.service.js';

/** The amount below which a shift lead releases a craft; the owner names it, and the last one counts. */
export class ReleaseAmountsService {
  constructor(
    private readonly amounts: ReleaseAmounts,
    private readonly parts: KeptParts,
  ) {}

  async page(query: unknown): Promise<Page<ReleaseAmountRow>> {
    const request = pageRequest(readInput(readPageQuery(query), 'query'));
    const rows = await this.amounts.page(request);
    return pageOf(rows, request, ({ version, id }) => ({ sort: String(version), id }));
  }

  async add(body: unknown, key: string | undefined, actor: Actor): Promise<ReleaseAmountRow> {
    const { amountCents } = readInput(readFleetInput(ReleaseAmountDto, body));
    const request = { operation: 'release-amount', key: readIdempotencyKey(key), body };
    const { id } = await this.parts.createOnce.run(request, async (newId) => {
      const version = ((await this.amounts.latest())?.version ?? 0) + 1;
      await this.amounts.add({ id: newId, version, amountCents, ...byOf(actor, this.parts.clock.now()) });
    });
    return (await this.amounts.find(id)) ?? refuse(404, 'There is no such amount.');
  }
}
