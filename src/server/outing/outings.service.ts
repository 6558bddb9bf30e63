import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import {
  OutingDto,
  OutingMarkDto,
  readOutingInput,
  UndoingDto,
} from '../../../shared/wire/outing-requests.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import type { CraftInUse } from '../fleet/fleet.api.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse } from '../platform/http/refuse.js';
import type { OutingRow } from './database/outing.row.js';
import { OutingsRepository } from './database/outings.repository.js';
import { OutingFleet } from './outing-fleet.js';
import { OutingSteps } from './outing-steps.js';
import { keptOf, type OutingReceipt, type OutingView, shownTo, viewOf } from './outing-views.js';

/** Craft that go out and come back. A craft is out on one outing at a time. */
@Injectable()
export class Outings {
  constructor(
    private readonly outings: OutingsRepository,
    private readonly fleet: OutingFleet,
    private readonly steps: OutingSteps,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  /** With everything that happened to it. */
  async read(id: string): Promise<OutingView & { events: object[] }> {
    const row = await this.found(id);
    const events = await this.outings.eventsOf('outing', id);
    return {
      ...viewOf(row, await this.fleet.byId(row.craftId)),
      events: events.map(({ kind, at, document, person, device }) => ({
        kind,
        at,
        document,
        person,
        device,
      })),
    };
  }

  async add(body: unknown, key: string | undefined, actor: Actor): Promise<OutingReceipt> {
    const outing = readInput(readOutingInput(OutingDto, body));
    const id = await this.steps.once({ operation: 'outing', key, body }, actor, async (now) => {
      const craft = await this.fleet.called(outing.unit);
      if ((await this.outings.outOf(craft.id)) !== null) {
        refuse(409, `${craft.unitName} is out already: mark it back, or change that outing.`, '/unit');
      }
      return this.write(craft, outing, now);
    });
    return this.shown(id, actor);
  }

  /** Writes an outing of a craft that is not out, within a unit of work, and says what happened. */
  async write({ id: craftId }: CraftInUse, outing: OutingDto, now: string) {
    const id = randomUUID();
    const kept = keptOf(outing);
    await this.outings.add({
      id,
      craftId,
      ...kept,
      backAt: null,
      version: 1,
      createdAt: now,
      updatedAt: now,
    });
    return { subject: 'outing', subjectId: id, kind: 'went-out', document: kept } as const;
  }

  /** Corrects what was written down, such as a later due time; the craft stays the same. */
  async change(id: string, body: unknown, ifMatch: string | undefined, actor: Actor): Promise<OutingView> {
    const outing = readInput(readOutingInput(OutingDto, body));
    await this.unitOfWork.run(async () => {
      const row = await this.found(id);
      const craft = await this.fleet.byId(row.craftId);
      assertFresh(ifMatch, viewOf(row, craft), outing);
      if ((await this.fleet.called(outing.unit)).id !== craft.id) {
        refuse(409, 'An outing is of one craft: mark this one back, and write down the other.', '/unit');
      }
      const now = this.clock.now();
      const kept = keptOf(outing);
      await this.outings.change({ id, ...kept, version: row.version + 1, updatedAt: now });
      await this.outings.note(
        { subject: 'outing', subjectId: id, kind: 'changed', document: kept },
        actor,
        now,
      );
    });
    return viewOf(await this.found(id), await this.craftOf(id));
  }

  /** A craft is back: by its unit, as a device without anybody signed in knows no ids. */
  async back(unit: string, body: unknown, key: string | undefined, actor: Actor): Promise<OutingReceipt> {
    const { at } = readInput(readOutingInput(OutingMarkDto, body));
    const request = { operation: 'outing-back', key, body: { unit, body } };
    const id = await this.steps.once(request, actor, async (now) => {
      const craft = await this.fleet.called(unit);
      const row = (await this.outings.outOf(craft.id)) ?? refuse(409, `${craft.unitName} is not out.`);
      return this.markBack(row, { at: at ?? now, now, how: 'marked' });
    });
    return this.shown(id, actor);
  }

  /** Within a unit of work; says what happened. */
  async markBack(row: OutingRow, { at, now, how }: { at: string; now: string; how: string }) {
    const { id, version } = row;
    await this.outings.change({ id, backAt: at, version: version + 1, updatedAt: now });
    return { subject: 'outing', subjectId: id, kind: 'back', document: { backAt: at, how } } as const;
  }

  /** It was marked back by mistake, and is out as before. */
  async undoBack(id: string, body: unknown, key: string | undefined, actor: Actor): Promise<OutingReceipt> {
    const { why } = readInput(readOutingInput(UndoingDto, body));
    await this.steps.once({ operation: 'outing-undoing', key, body: { id, body } }, actor, async (now) => {
      const row = await this.found(id);
      if (row.backAt === null) refuse(409, 'It is out: there is nothing to undo.');
      if ((await this.outings.outOf(row.craftId)) !== null) {
        refuse(409, 'The craft went out again meanwhile: this outing stays as it is.');
      }
      await this.outings.change({ id, backAt: null, version: row.version + 1, updatedAt: now });
      return { subject: 'outing', subjectId: id, kind: 'back-undone', document: { why, backAt: row.backAt } };
    });
    return this.shown(id, actor);
  }

  private async found(id: string): Promise<OutingRow> {
    return (await this.outings.find(id)) ?? refuse(404, 'There is no such outing.');
  }

  private async craftOf(id: string): Promise<CraftInUse> {
    return this.fleet.byId((await this.found(id)).craftId);
  }

  private async shown(id: string, actor: Actor): Promise<OutingReceipt> {
    const row = await this.found(id);
    return shownTo(actor, row, await this.fleet.byId(row.craftId));
  }
}
