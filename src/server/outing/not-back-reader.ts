import { Injectable } from '@nestjs/common';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { refuse } from '../platform/http/refuse.js';
import { NotBackRepository } from './database/not-back.repository.js';
import type { NotBackRow } from './database/not-back.row.js';
import { OutingsRepository } from './database/outings.repository.js';
import {
  type NotBackReceipt,
  type NotBackView,
  receiptOfNotBack,
  viewOfNotBack,
  WAITING_ENDS,
} from './not-back-views.js';
import { OutingFleet } from './outing-fleet.js';
import { type OutingView, viewOf } from './outing-views.js';

/** Shows craft that are not back, with search sheet and ladder. */
@Injectable()
export class NotBackReader {
  constructor(
    private readonly notBacks: NotBackRepository,
    private readonly outings: OutingsRepository,
    private readonly fleet: OutingFleet,
    private readonly clock: Clock,
  ) {}

  async open(): Promise<{ items: NotBackView[] }> {
    return this.viewed(await this.notBacks.open(WAITING_ENDS));
  }

  async ofIncident(incidentId: string): Promise<{ items: NotBackView[] }> {
    return this.viewed(await this.notBacks.ofIncident(incidentId));
  }

  async read(id: string): Promise<NotBackView & { events: object[] }> {
    const events = await this.outings.eventsOf('not-back', id);
    return {
      ...(await this.view(await this.found(id))),
      events: events.map(({ kind, at, document, person, device }) => ({
        kind,
        at,
        document,
        person,
        device,
      })),
    };
  }

  /** @throws ProblemException 404 */
  async found(id: string): Promise<NotBackRow> {
    return (await this.notBacks.find(id)) ?? refuse(404, 'There is no craft "not back" at this address.');
  }

  /** A device adds and does not read: it is told what it did, and nobody's name or number. */
  async shown(id: string, actor: Actor): Promise<NotBackReceipt | NotBackView> {
    const row = await this.found(id);
    if (actor.kind === 'person') return this.view(row);
    return receiptOfNotBack(row, await this.fleet.byId(row.craftId));
  }

  async view(row: NotBackRow): Promise<NotBackView> {
    const craft = await this.fleet.byId(row.craftId);
    const station = await this.fleet.stationOf(craft);
    return viewOfNotBack(row, {
      craft,
      station,
      outing: await this.outingOf(row),
      clock: this.fleet.clockOf(station),
      now: Date.parse(this.clock.now()),
    });
  }

  async outingOf({ outingId, craftId }: NotBackRow): Promise<OutingView | null> {
    const row = outingId === null ? null : await this.outings.find(outingId);
    return row === null ? null : viewOf(row, await this.fleet.byId(craftId));
  }

  private async viewed(rows: readonly NotBackRow[]): Promise<{ items: NotBackView[] }> {
    const items: NotBackView[] = [];
    for (const row of rows) items.push(await this.view(row));
    return { items };
  }
}
