import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { proposeIncident } from '../../../shared/outing/not-back.js';
import {
  NotBackEndDto,
  NotIncidentDto,
  OpenNotBackDto,
  readOutingInput,
  RungStampDto,
  SearchSheetDto,
  UndoingDto,
} from '../../../shared/wire/outing-requests.dto.js';
import type { Actor, PersonActor } from '../accounts/accounts.api.js';
import type { CraftInUse } from '../fleet/fleet.api.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse, refuseForCurrent } from '../platform/http/refuse.js';
import { NotBackRepository } from './database/not-back.repository.js';
import type { NotBackRow } from './database/not-back.row.js';
import { OutingsRepository } from './database/outings.repository.js';
import { NotBackReader } from './not-back-reader.js';
import type { NotBackReceipt, NotBackView } from './not-back-views.js';
import { OutingFleet } from './outing-fleet.js';
import { OutingSteps } from './outing-steps.js';
import { Outings } from './outings.service.js';

const happened = (subjectId: string, kind: string, document: object) =>
  ({ subject: 'not-back', subjectId, kind, document }) as const;

/** What people do about a craft that is not back. Nothing here ends by itself. */
@Injectable()
export class NotBacks {
  constructor(
    private readonly notBacks: NotBackRepository,
    private readonly reader: NotBackReader,
    private readonly repository: OutingsRepository,
    private readonly outings: Outings,
    private readonly fleet: OutingFleet,
    private readonly steps: OutingSteps,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  async open(body: unknown, key: string | undefined, actor: Actor): Promise<NotBackReceipt> {
    const { unit, id: wanted } = readInput(readOutingInput(OpenNotBackDto, body));
    const id = await this.steps.once({ operation: 'not-back', key, body }, actor, async (now) => {
      const craft = await this.fleet.called(unit);
      const open = await this.notBacks.openOf(craft.id);
      if (open !== null) {
        const detail = `${craft.unitName} is being looked for already: see "not back".`;
        refuseForCurrent(detail, '/unit', await this.reader.shown(open.id, actor));
      }
      return this.begin(craft, actor, now, wanted);
    });
    return this.reader.shown(id, actor);
  }

  /** Within a unit of work; says what happened. */
  async begin({ id: craftId }: CraftInUse, actor: Actor, now: string, id: string = randomUUID()) {
    if ((await this.notBacks.find(id)) !== null) refuse(409, 'Another one has this id: leave it out.', '/id');
    const outing = await this.repository.outOf(craftId);
    await this.notBacks.add({
      id,
      craftId,
      outingId: outing?.id ?? null,
      openedAt: now,
      openedBy: actor.personName,
      sheet: {},
      climbed: [],
      ended: null,
      endedAt: null,
      endedBy: null,
      endedHow: null,
      notIncident: null,
      notIncidentBy: null,
      incidentId: null,
      version: 1,
      updatedAt: now,
    });
    return happened(id, 'opened', { outingId: outing?.id ?? null });
  }

  async keepSheet(
    id: string,
    body: unknown,
    ifMatch: string | undefined,
    actor: PersonActor,
  ): Promise<NotBackView> {
    const sheet = readInput(readOutingInput(SearchSheetDto, body));
    await this.unitOfWork.run(async () => {
      const row = await this.reader.found(id);
      assertFresh(ifMatch, { ...row.sheet, version: row.version }, sheet);
      const now = this.clock.now();
      await this.change(row, { sheet }, now);
      await this.repository.note(happened(id, 'sheet', sheet), actor, now);
    });
    return this.reader.view(await this.reader.found(id));
  }

  async stamp(id: string, body: unknown, key: string | undefined, actor: Actor): Promise<NotBackReceipt> {
    const { rung, stamp, words } = readInput(readOutingInput(RungStampDto, body));
    await this.steps.once({ operation: 'rung', key, body: { id, body } }, actor, async (now) => {
      const row = await this.reader.found(id);
      const one = { id: randomUUID(), rung, stamp, words: words ?? null, person: actor.personName };
      await this.change(row, { climbed: [...row.climbed, one] }, now);
      return happened(id, 'stamped', one);
    });
    return this.reader.shown(id, actor);
  }

  async undoStamp(
    { id, stamp }: { id: string; stamp: string },
    body: unknown,
    key: string | undefined,
    actor: Actor,
  ): Promise<NotBackReceipt> {
    const { why } = readInput(readOutingInput(UndoingDto, body));
    await this.steps.once({ operation: 'rung-undoing', key, body: { stamp, body } }, actor, async (now) => {
      const row = await this.reader.found(id);
      const climbed = row.climbed.filter((one) => one.id !== stamp);
      if (climbed.length === row.climbed.length) refuse(404, 'There is no such time on the ladder.');
      await this.change(row, { climbed }, now);
      return happened(id, 'stamp-undone', { stamp, why });
    });
    return this.reader.shown(id, actor);
  }

  /** Somebody says how it turned out. A craft that was late is marked back with it, where nobody did. */
  async end(id: string, body: unknown, key: string | undefined, actor: PersonActor): Promise<NotBackReceipt> {
    const { ended, at, how } = readInput(readOutingInput(NotBackEndDto, body));
    await this.steps.once({ operation: 'not-back-end', key, body: { id, body } }, actor, async (now) => {
      const row = await this.reader.found(id);
      if (row.ended !== null) refuse(409, 'It has ended already: undo that ending first.', '/ended');
      const endedAt = at ?? now;
      const change = { ended, endedAt, endedBy: actor.personName, endedHow: how ?? null };
      await this.change(row, change, now);
      const out = ended === 'late' ? await this.repository.outOf(row.craftId) : null;
      if (out !== null) {
        const back = await this.outings.markBack(out, { at: endedAt, now, how: 'late' });
        await this.repository.note(back, actor, now);
      }
      return happened(id, 'ended', { ...change, markedBack: out !== null });
    });
    return this.reader.shown(id, actor);
  }

  /** An ending that was written by mistake; a craft that it marked back is put out again by that outing's own undoing. */
  async undoEnd(
    id: string,
    body: unknown,
    key: string | undefined,
    actor: PersonActor,
  ): Promise<NotBackReceipt> {
    const { why } = readInput(readOutingInput(UndoingDto, body));
    await this.steps.once({ operation: 'not-back-undoing', key, body: { id, body } }, actor, async (now) => {
      const row = await this.reader.found(id);
      if (row.ended === null) refuse(409, 'It has not ended: there is nothing to undo.');
      if (row.incidentId !== null) refuse(409, 'It became an incident, which stays: go on in its record.');
      if ((await this.notBacks.openOf(row.craftId)) !== null) {
        refuse(409, 'The craft is being looked for again: this one stays ended.');
      }
      const { ended, endedAt, endedBy, endedHow, notIncident, notIncidentBy } = row;
      await this.change(
        row,
        {
          ended: null,
          endedAt: null,
          endedBy: null,
          endedHow: null,
          notIncident: null,
          notIncidentBy: null,
        },
        now,
      );
      const before = { ended, endedAt, endedBy, endedHow, notIncident, notIncidentBy };
      return happened(id, 'ending-undone', { why, before });
    });
    return this.reader.shown(id, actor);
  }

  /** Aground, stolen, found empty: it is no incident only because somebody with a name says so, and why. */
  async notIncident(
    id: string,
    body: unknown,
    key: string | undefined,
    actor: PersonActor,
  ): Promise<NotBackReceipt> {
    const { why } = readInput(readOutingInput(NotIncidentDto, body));
    await this.steps.once({ operation: 'not-incident', key, body: { id, body } }, actor, async (now) => {
      const row = await this.reader.found(id);
      if (row.incidentId !== null) refuse(409, 'It became an incident, which stays.');
      if (proposeIncident(row.ended) === null) refuse(409, 'As it stands, nobody asks for an incident.');
      await this.change(row, { notIncident: why, notIncidentBy: actor.personName }, now);
      return happened(id, 'not-incident', { why });
    });
    return this.reader.shown(id, actor);
  }

  private change(row: NotBackRow, change: Partial<NotBackRow>, now: string): Promise<void> {
    return this.notBacks.change({ ...change, id: row.id, version: row.version + 1, updatedAt: now });
  }
}
