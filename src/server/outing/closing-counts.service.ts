import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { OpenCountDto, readCountAnswer, readOutingInput } from '../../../shared/wire/outing-requests.dto.js';
import type { Actor, PersonActor } from '../accounts/accounts.api.js';
import type { CraftInUse } from '../fleet/fleet.api.js';
import { Clock } from '../platform/clock.js';
import { UnitOfWork } from '../platform/database/unit-of-work.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';
import { readInput } from '../platform/http/read-input.js';
import { refuse, refuseForCurrent } from '../platform/http/refuse.js';
import type { ClosingCountRow, CountedCraft, CountOutcome } from './database/closing-count.row.js';
import { ClosingCountsRepository } from './database/closing-counts.repository.js';
import { NotBackRepository } from './database/not-back.repository.js';
import { OutingsRepository } from './database/outings.repository.js';
import { NotBacks } from './not-back.service.js';
import { OutingFleet } from './outing-fleet.js';
import { OutingSteps } from './outing-steps.js';
import { Outings } from './outings.service.js';

/** What was answered longer ago than this says nothing about now. Common practice, no source. */
const LONGEST_COUNT_MS = 12 * 3_600_000;

/** What a device is told, which adds and does not read: what is still to be asked for. */
export type CountReceipt = Pick<CountView, 'id' | 'version' | 'day' | 'unanswered'>;

export type CountView = ClosingCountRow & { readonly unanswered: readonly string[] };

/** The count at closing: every craft is in, out or known to be elsewhere, and somebody signs for it. */
@Injectable()
export class ClosingCounts {
  constructor(
    private readonly counts: ClosingCountsRepository,
    private readonly outings: Outings,
    private readonly notBackService: NotBacks,
    private readonly notBacks: NotBackRepository,
    private readonly repository: OutingsRepository,
    private readonly fleet: OutingFleet,
    private readonly steps: OutingSteps,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  async latest(): Promise<{ items: CountView[] }> {
    const items: CountView[] = [];
    for (const row of await this.counts.latest()) items.push(await this.view(row));
    return { items };
  }

  async read(id: string): Promise<CountView> {
    return this.view(await this.found(id));
  }

  async open(body: unknown, key: string | undefined, actor: Actor): Promise<CountReceipt> {
    const { stationId, id: wanted } = readInput(readOutingInput(OpenCountDto, body));
    const station = stationId === undefined ? null : await this.fleet.station(stationId);
    const id = await this.steps.once({ operation: 'closing-count', key, body }, actor, async (now) => {
      const day = this.fleet.clockOf(station).localDate(Date.parse(now));
      const open = await this.counts.openAt(stationId ?? null, day);
      if (open !== null) {
        const detail = 'A count of this day is open: go on with it.';
        refuseForCurrent(detail, '/stationId', await this.shown(open.id, actor));
      }
      const count = wanted ?? randomUUID();
      if ((await this.counts.find(count)) !== null)
        refuse(409, 'Another one has this id: leave it out.', '/id');
      await this.counts.add({
        id: count,
        stationId: stationId ?? null,
        day,
        answers: [],
        openedBy: actor.personName,
        openedAt: now,
        closedById: null,
        closedBy: null,
        closedAt: null,
        outcome: null,
        version: 1,
      });
      return {
        subject: 'count',
        subjectId: count,
        kind: 'opened',
        document: { stationId: stationId ?? null, day },
      };
    });
    return this.shown(id, actor);
  }

  /** Answers for one craft; a later answer for the same craft takes the place of an earlier one, which stays in the events. */
  async answer(id: string, body: unknown, key: string | undefined, actor: Actor): Promise<CountReceipt> {
    const { unit, answer, where, at } = readInput(readCountAnswer(body));
    await this.steps.once({ operation: 'count-answer', key, body: { id, body } }, actor, async (now) => {
      const row = await this.found(id);
      if (row.closedAt !== null) refuse(409, 'This count is closed and signed: begin a new one.');
      const { id: craftId, unitName } = await this.fleet.called(unit);
      const { personName: person } = actor;
      const seen = at === undefined || Date.parse(at) > Date.parse(now) ? now : new Date(at).toISOString();
      const said: CountedCraft = { craftId, unitName, answer, where: where ?? null, person, at: seen };
      const others = row.answers.filter((one) => one.craftId !== craftId);
      await this.counts.change({ id, answers: [...others, said], version: row.version + 1 });
      return { subject: 'count', subjectId: id, kind: 'answered', document: said };
    });
    return this.shown(id, actor);
  }

  /**
   * Signs the count: craft counted in are marked back, craft counted out are looked for.
   * @throws ProblemException 409 naming every craft that nobody has answered for
   */
  async close(id: string, ifMatch: string | undefined, actor: PersonActor): Promise<CountView> {
    await this.unitOfWork.run(async () => {
      const row = await this.found(id);
      const view = await this.view(row);
      assertFresh(ifMatch, view, {});
      if (row.closedAt !== null) refuse(409, 'This count is closed and signed.');
      const now = this.clock.now();
      if (Date.parse(now) - Date.parse(row.openedAt) > LONGEST_COUNT_MS) {
        refuse(409, 'This count was begun more than 12 hours ago: begin a new one and look again.');
      }
      if (view.unanswered.length > 0) refuseUnanswered(view.unanswered);
      const outcome = await this.follow(row, actor, now);
      const closed = { closedById: actor.accountId, closedBy: actor.personName, closedAt: now };
      await this.counts.change({ id, ...closed, outcome, version: row.version + 1 });
      const document = { ...closed, outcome, answers: row.answers };
      await this.repository.note({ subject: 'count', subjectId: id, kind: 'closed', document }, actor, now);
    });
    return this.read(id);
  }

  private async shown(id: string, actor: Actor): Promise<CountReceipt> {
    const view = await this.read(id);
    const { version, day, unanswered } = view;
    return actor.kind === 'person' ? view : { id, version, day, unanswered };
  }

  private async follow({ answers }: ClosingCountRow, actor: Actor, now: string): Promise<CountOutcome> {
    const opened: string[] = [];
    const markedBack: string[] = [];
    const stillToEnd: string[] = [];
    for (const { craftId, unitName, answer, at } of answers) {
      const lost = await this.notBacks.openOf(craftId);
      const out = await this.repository.outOf(craftId);
      if (answer === 'in' && out !== null) {
        await this.repository.note(await this.outings.markBack(out, { at, now, how: 'counted' }), actor, now);
        markedBack.push(unitName);
      }
      if (answer !== 'out' && lost !== null) stillToEnd.push(unitName);
      if (answer === 'out' && lost === null) {
        const craft = await this.fleet.byId(craftId);
        await this.repository.note(await this.notBackService.begin(craft, actor, now), actor, now);
        opened.push(unitName);
      }
    }
    return { opened, markedBack, stillToEnd };
  }

  private async view(row: ClosingCountRow): Promise<CountView> {
    if (row.closedAt !== null) return { ...row, unanswered: [] };
    const answered = await this.standing(row);
    const asked = (await this.fleet.all()).filter((craft) => isAsked(craft, row.stationId));
    const unanswered = asked.filter(({ id }) => !answered.has(id)).map(({ unitName }) => unitName);
    return { ...row, unanswered };
  }

  /** Craft whose answer still holds: one that went out after it was counted in, or came back after it was counted out, is asked for again. */
  private async standing({ answers }: ClosingCountRow): Promise<Set<string>> {
    const wentOut = new Map((await this.repository.out()).map((row) => [row.craftId, row.createdAt]));
    const cameBack = await this.repository.lastBack();
    const moved = ({ craftId, answer, at }: CountedCraft): boolean =>
      ((answer === 'out' ? cameBack : wentOut).get(craftId) ?? '') > at;
    return new Set(answers.filter((one) => !moved(one)).map(({ craftId }) => craftId));
  }

  private async found(id: string): Promise<ClosingCountRow> {
    return (await this.counts.find(id)) ?? refuse(404, 'There is no such count.');
  }
}

/** A craft of no station is asked for at every station, so that no count leaves it out. */
function isAsked(craft: CraftInUse, stationId: string | null): boolean {
  return stationId === null || craft.stationId === null || craft.stationId === stationId;
}

function refuseUnanswered(units: readonly string[]): never {
  throw new ProblemException({
    ...problemOfStatus(409),
    source: 'request',
    errors: units.map((unit) => ({
      pointer: '/answers',
      detail: `${unit}: say whether it is in, out or elsewhere.`,
    })),
  });
}
