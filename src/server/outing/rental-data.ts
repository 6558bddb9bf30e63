import { Injectable } from '@nestjs/common';
import type { Actor } from '../accounts/accounts.api.js';
import { Clock } from '../platform/clock.js';
import { NotBackRepository } from './database/not-back.repository.js';
import type { OutingRow } from './database/outing.row.js';
import { type MonthOfOutings, OutingsRepository } from './database/outings.repository.js';
import { WAITING_ENDS } from './not-back-views.js';

export type { MonthOfOutings } from './database/outings.repository.js';

/** An outing that came back, as far as it decides how long its names and numbers are kept. */
export type PastOuting = Pick<OutingRow, 'id' | 'craftId' | 'outAt' | 'backAt' | 'createdAt'>;

const DELETED = 'deleted';

/** Names, numbers and cars of renters, month by month. */
@Injectable()
export class RentalData {
  constructor(
    private readonly outings: OutingsRepository,
    private readonly notBacks: NotBackRepository,
    private readonly clock: Clock,
  ) {}

  /** Months (UTC) in which craft came back of whose renters something is still kept, the oldest first. */
  months(): Promise<MonthOfOutings[]> {
    return this.outings.monthsWithDetails();
  }

  /** Of a month, those that had no incident that came of a search, and of which nobody still has to say whether they had. */
  async of(month: string): Promise<PastOuting[]> {
    const rows = await this.outings.withDetailsOf(month);
    const notBacks = await this.notBacks.ofOutings(rows.map(({ id }) => id));
    const kept = new Set(
      notBacks.flatMap(({ outingId, ended, incidentId, notIncident }) => {
        const waits = ended === null || (WAITING_ENDS.includes(ended) && notIncident === null);
        return incidentId !== null || waits ? [outingId] : [];
      }),
    );
    return rows.filter(({ id }) => !kept.has(id));
  }

  /**
   * Takes what was written down of renters out of outings, what happened to them and what was searched, within a unit
   * of work. Which craft went out and came back when stays.
   */
  async delete(ids: readonly string[], reason: string, actor: Actor): Promise<void> {
    const now = this.clock.now();
    for (const id of ids) {
      await this.outings.dropDetails(id, now);
      await this.outings.dropWords('outing', id);
      await this.outings.note(
        { subject: 'outing', subjectId: id, kind: 'details-deleted', document: { reason } },
        actor,
        now,
      );
    }
    for (const { id, endedHow, notIncident, version } of await this.notBacks.ofOutings(ids)) {
      await this.outings.dropWords('not-back', id);
      const said = {
        ...(endedHow !== null && { endedHow: DELETED }),
        ...(notIncident !== null && { notIncident: DELETED }),
      };
      await this.notBacks.change({
        id,
        sheet: {},
        climbed: [],
        ...said,
        version: version + 1,
        updatedAt: now,
      });
    }
  }
}
