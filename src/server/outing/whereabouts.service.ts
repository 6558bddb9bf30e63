import { Injectable } from '@nestjs/common';
import { orderCraft } from '../../../shared/outing/order-craft.js';
import { type Standing, standingOf } from '../../../shared/outing/outing.js';
import { Clock } from '../platform/clock.js';
import { ClosingCountsRepository } from './database/closing-counts.repository.js';
import type { CountedCraft } from './database/closing-count.row.js';
import { NotBackRepository } from './database/not-back.repository.js';
import { OutingsRepository } from './database/outings.repository.js';
import { OutingFleet } from './outing-fleet.js';
import { type OutingView, viewOf } from './outing-views.js';
import { WAITING_ENDS } from './not-back-views.js';

/** One craft of the fleet and where it is, as far as somebody wrote it down. */
export interface CraftWhereabouts {
  readonly craftId: string;
  readonly unitName: string;
  readonly colours: readonly string[];
  readonly stationId: string | null;
  readonly inService: boolean;
  readonly standing: Standing;
  readonly dueBackAt: string | null;
  readonly lastIn: string | null;
  readonly outing: OutingView | null;
  /** Id of the one that has not ended, or waits for a word whether it is an incident. */
  readonly notBack: string | null;
  /** What was last counted, where that is later than it last came back. */
  readonly counted: Pick<CountedCraft, 'answer' | 'where' | 'person' | 'at'> | null;
}

/** What is out, late and in now. */
@Injectable()
export class WhereCraftAre {
  constructor(
    private readonly outings: OutingsRepository,
    private readonly notBacks: NotBackRepository,
    private readonly counts: ClosingCountsRepository,
    private readonly fleet: OutingFleet,
    private readonly clock: Clock,
  ) {}

  async list(): Promise<{ asOf: string; items: CraftWhereabouts[] }> {
    const asOf = this.clock.now();
    const out = new Map((await this.outings.out()).map((row) => [row.craftId, row]));
    const back = await this.outings.lastBack();
    const late = await this.notBacks.lastLate();
    const lost = new Map((await this.notBacks.open(WAITING_ENDS)).map(({ craftId, id }) => [craftId, id]));
    const counted = await this.lastCounted();
    const items = (await this.fleet.all()).map((craft): CraftWhereabouts => {
      const row = out.get(craft.id) ?? null;
      // Counted out and never written down as out: that it was only late is all that anybody said of its return.
      const cameBack = laterOf(back.get(craft.id), late.get(craft.id));
      const count = newerOf(counted.get(craft.id), cameBack);
      const lastIn = count === null ? cameBack : count.answer === 'in' ? count.at : null;
      // Counted out without an outing: when it was due is what nobody knows.
      const isOut = row !== null || count?.answer === 'out';
      const dueBackAt = row?.dueBackAt ?? null;
      return {
        craftId: craft.id,
        unitName: craft.unitName,
        colours: craft.colours ?? [],
        stationId: craft.stationId,
        inService: craft.inService,
        standing: standingOf({ out: isOut ? { dueBackAt } : null, lastIn }, Date.parse(asOf)),
        dueBackAt,
        lastIn,
        outing: row === null ? null : viewOf(row, craft),
        notBack: lost.get(craft.id) ?? null,
        counted: count,
      };
    });
    return { asOf, items: orderCraft(items) };
  }

  private async lastCounted(): Promise<Map<string, CountedCraft>> {
    const counted = new Map<string, CountedCraft>();
    for (const { answers } of await this.counts.closed()) {
      for (const answer of answers) if (!counted.has(answer.craftId)) counted.set(answer.craftId, answer);
    }
    return counted;
  }
}

function laterOf(one: string | undefined, other: string | undefined): string | null {
  const times = [one, other].flatMap((time) => (time === undefined ? [] : [new Date(time).toISOString()]));
  return times.sort().at(-1) ?? null;
}

function newerOf(count: CountedCraft | undefined, cameBack: string | null): CraftWhereabouts['counted'] {
  if (count === undefined || (cameBack !== null && cameBack > count.at)) return null;
  const { answer, where, person, at } = count;
  return { answer, where, person, at };
}
