import { Injectable } from '@nestjs/common';
import {
  type CraftHeld,
  type NotBackCraft,
  refuseSignature,
  type ShiftSummary,
  type ShiftTask,
  summarizeShift,
} from '../../../shared/follow-up/summarize-shift.js';
import {
  readFollowUpInput,
  ShiftHandOverDto,
  ShiftSignatureDto,
} from '../../../shared/wire/follow-up-requests.dto.js';
import { type Page, readPageQuery } from '../../../shared/wire/page-query.dto.js';
import type { PersonActor } from '../accounts/accounts.api.js';
import { Fleet } from '../fleet/fleet.api.js';
import { NotBackReader } from '../outing/outing.api.js';
import { Clock } from '../platform/clock.js';
import { CreateOnce } from '../platform/database/create-once.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { type Cursor, pageOf, pageRequest } from '../platform/http/cursor.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import { IncidentsService, type IncidentOutline, ServiceSections } from '../record/record.api.js';
import { HouseRepository } from './database/house.repository.js';
import type { ShiftHandOverRow } from './database/shift-hand-over.row.js';
import type { TaskRow } from './database/task.row.js';
import { TasksRepository } from './database/tasks.repository.js';
import { IncidentCrafts } from './incident-craft.js';

/** As many incidents and tasks as are read at a time. */
const PART = 100;

/** What one shift hands to the next: gathered when it is built, and signed by both as it was then. */
@Injectable()
export class HandOvers {
  constructor(
    private readonly house: HouseRepository,
    private readonly tasks: TasksRepository,
    private readonly incidents: IncidentsService,
    private readonly sections: ServiceSections,
    private readonly crafts: IncidentCrafts,
    private readonly fleet: Fleet,
    private readonly notBacks: NotBackReader,
    private readonly unitOfWork: UnitOfWork,
    private readonly createOnce: CreateOnce,
    private readonly clock: Clock,
  ) {}

  async page(query: unknown): Promise<Page<ShiftHandOverRow>> {
    const request = pageRequest(readInput(readPageQuery(query), 'query'));
    const rows = await this.house.handOvers(request);
    return pageOf(rows, request, ({ createdAt, id }) => ({ sort: createdAt, id }));
  }

  async find(id: string): Promise<ShiftHandOverRow> {
    return (await this.house.handOver(id)) ?? refuse(404, 'There is no such hand-over.');
  }

  async build(body: unknown, key: string | undefined, actor: PersonActor): Promise<ShiftHandOverRow> {
    const { remarks } = readInput(readFollowUpInput(ShiftHandOverDto, body));
    const request = { operation: 'shift-hand-over', key: readIdempotencyKey(key), body };
    const now = this.clock.now();
    const summary = await this.gather(now, actor);
    const { id } = await this.createOnce.run(request, async (newId) => {
      await this.house.addHandOver({
        id: newId,
        summary,
        remarks: remarks ?? null,
        builtBy: actor.personName,
        outgoingId: null,
        outgoingName: null,
        outgoingAt: null,
        incomingId: null,
        incomingName: null,
        incomingAt: null,
        version: 1,
        createdAt: now,
        updatedAt: now,
      });
    });
    return this.find(id);
  }

  async sign(
    id: string,
    body: unknown,
    ifMatch: string | undefined,
    { accountId, personName }: PersonActor,
  ): Promise<ShiftHandOverRow> {
    const { side } = readInput(readFollowUpInput(ShiftSignatureDto, body));
    await this.unitOfWork.run(async () => {
      const row = await this.find(id);
      assertFresh(ifMatch, row, {});
      const signed = { outgoing: row.outgoingId, incoming: row.incomingId };
      const refusal = refuseSignature(signed, side, accountId);
      if (refusal !== null) refuse(409, refusal, '/side');
      const now = this.clock.now();
      const signature =
        side === 'outgoing'
          ? { outgoingId: accountId, outgoingName: personName, outgoingAt: now }
          : { incomingId: accountId, incomingName: personName, incomingAt: now };
      await this.house.changeHandOver({ id, ...signature, version: row.version + 1, updatedAt: now });
    });
    return this.find(id);
  }

  /** All that is open, gathered before anything is written, so that nobody waits for it. */
  private async gather(now: string, actor: PersonActor): Promise<ShiftSummary> {
    const open = await this.openIncidents(actor);
    const calls = open.map(({ id, reference, openedAt }) => ({ incidentId: id, reference, openedAt }));
    const references = new Map(open.map(({ id, reference }) => [id, reference]));
    const craft = await this.craftHeld(open);
    const summary = { calls, craft, notBack: await this.notBack(), tasks: await this.openTasks(references) };
    return summarizeShift(summary, Date.parse(now));
  }

  private async openIncidents(actor: PersonActor): Promise<IncidentOutline[]> {
    const open: IncidentOutline[] = [];
    for (let after: string | null = ''; after !== null;) {
      const request = pageRequest({ limit: String(PART), ...(after !== '' && { after }) });
      const page: Page<IncidentOutline> = await this.incidents.list({ status: 'open' }, request, actor);
      open.push(...page.items);
      after = page.next;
    }
    return open;
  }

  /** Every craft of the fleet that is kept in, and those of open incidents that have left the fleet. */
  private async craftHeld(open: readonly IncidentOutline[]): Promise<CraftHeld[]> {
    const asked = new Map<string, string>();
    for (const { id, unitName, inService } of await this.fleet.inUse())
      if (!inService) asked.set(id, unitName);
    for (const { id } of open) {
      for (const craft of await this.crafts.of(await this.sections.record(id)))
        asked.set(craft.id, craft.name);
    }
    const held: CraftHeld[] = [];
    for (const [craftId, name] of asked) {
      const why = await this.crafts.whyHeld(craftId);
      if (why.length > 0) held.push({ craftId, name, station: await this.stationOf(craftId), why });
    }
    return held;
  }

  private async notBack(): Promise<NotBackCraft[]> {
    const { items } = await this.notBacks.open();
    return items.map(({ id, unit, openedAt, ended }) => ({ notBackId: id, unit, since: openedAt, ended }));
  }

  private async stationOf(craftId: string): Promise<string | null> {
    const stationId = (await this.fleet.craft(craftId))?.stationId ?? null;
    return stationId === null ? null : ((await this.fleet.station(stationId))?.name ?? null);
  }

  private async openTasks(references: Map<string, string>): Promise<ShiftTask[]> {
    const tasks: ShiftTask[] = [];
    for (let after: Cursor | null = null; ;) {
      const rows: TaskRow[] = await this.tasks.page({ state: 'open' }, { limit: PART, after });
      for (const { id, incidentId, title, dueAt, template } of rows.slice(0, PART)) {
        const reference = references.get(incidentId) ?? (await this.sections.outline(incidentId)).reference;
        references.set(incidentId, reference);
        tasks.push({ taskId: id, reference, title, dueAt, isPromise: template === 'promise' });
      }
      const last = rows[PART - 1];
      if (rows.length <= PART || last === undefined) return tasks;
      after = { sort: last.dueOrder, id: last.id };
    }
  }
}
