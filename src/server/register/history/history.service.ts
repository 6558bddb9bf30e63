import { setImmediate } from 'node:timers/promises';
import { Injectable } from '@nestjs/common';
import {
  type HistoryGroup,
  groupHistory,
  historyLine,
  type HistoryLine,
  totalOf,
} from '../../../../shared/patterns/incident-history.js';
import type { IncidentRecord } from '../../../../shared/record/incident-record.js';
import { findCasualtyType } from '../../../../shared/vocabulary/casualty-types.js';
import { HistoryQueryDto } from '../../../../shared/wire/history-query.dto.js';
import { readRecordInput } from '../../../../shared/wire/record-reading.js';
import { Fleet } from '../../fleet/fleet.api.js';
import { Clock } from '../../platform/clock.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { Cursor } from '../../platform/http/cursor.js';
import { readInput } from '../../platform/http/read-input.js';
import { refuse } from '../../platform/http/refuse.js';
import { ServiceSections } from '../../record/record.api.js';
import { RegisterRepository } from '../database/register.repository.js';

/** The incidents of a period, as whoever renews a policy is told of them: counts and sums, no names. */
export interface IncidentHistory {
  readonly from: string;
  readonly until: string;
  /** RFC 3339. */
  readonly asOf: string;
  readonly total: HistoryGroup;
  readonly byMonth: readonly HistoryGroup[];
  readonly byCraft: readonly HistoryGroup[];
  readonly byStation: readonly HistoryGroup[];
  readonly byType: readonly HistoryGroup[];
  readonly lines: readonly HistoryLine[];
  /** Outings that began in the period and were entered; null while none was. */
  readonly outings: number | null;
}

const AT_ONCE = 200;
const DAY_MS = 86_400_000;

@Injectable()
export class IncidentHistoryService {
  constructor(
    private readonly register: RegisterRepository,
    private readonly sections: ServiceSections,
    private readonly fleet: Fleet,
    private readonly unitOfWork: UnitOfWork,
    private readonly clock: Clock,
  ) {}

  /** By the day on which it happened, at the place. */
  async read(query: unknown): Promise<IncidentHistory> {
    const { from, until } = readInput(readRecordInput(HistoryQueryDto, query), 'query');
    if (until < from) refuse(422, 'Must not be before the first day.', '/until');
    const asOf = this.clock.now();
    const lines: HistoryLine[] = [];
    // Nothing is opened before it happens; a day is left for zones.
    const openedFrom = new Date(Date.parse(from) - DAY_MS).toISOString();
    for (let after: Cursor | null = null; ;) {
      const heads = await this.register.heads({ openedFrom }, asOf, { after, limit: AT_ONCE });
      for (const { head } of heads) {
        const record = await this.sections.record(head.id);
        const line = historyLine(record, await this.stationsOf(record));
        if (from <= line.day && line.day <= until) lines.push(line);
        // Between two incidents others have their turn.
        await setImmediate();
      }
      const last = heads.at(-1);
      if (last === undefined || heads.length < AT_ONCE) break;
      after = { sort: last.sort, id: last.head.id };
    }
    lines.sort(
      (one, other) => one.day.localeCompare(other.day) || one.reference.localeCompare(other.reference),
    );
    const typeOf = (slug: string): string => findCasualtyType(slug)?.label ?? slug;
    return {
      from,
      until,
      asOf,
      total: totalOf('All', lines),
      byMonth: groupHistory(lines, ({ day }) => [day.slice(0, 7)], '').sort((one, other) =>
        one.name.localeCompare(other.name),
      ),
      byCraft: groupHistory(lines, ({ craft }) => craft, 'No craft of ours named'),
      byStation: groupHistory(lines, ({ stations }) => stations, 'No station known'),
      byType: groupHistory(lines, ({ types }) => types.slice(0, 1).map(typeOf), 'Not said yet'),
      lines: lines.map((line) => ({ ...line, types: line.types.map(typeOf) })),
      outings: await this.outings(from, until),
    };
  }

  /** Where our craft in it belong now, each station once. */
  private async stationsOf({ sections }: IncidentRecord): Promise<string[]> {
    const names = new Set<string>();
    for (const { fleetCraft } of sections.craft?.craft ?? []) {
      const craft = fleetCraft === undefined ? null : await this.fleet.craft(fleetCraft);
      const station = craft?.stationId ? await this.fleet.station(craft.stationId) : null;
      if (station !== null) names.add(station.name);
    }
    return [...names].sort();
  }

  /** Counted by the days of UTC: near midnight nobody goes out. */
  private async outings(from: string, until: string): Promise<number | null> {
    const row = await this.unitOfWork.manager
      .createQueryBuilder()
      .select('COUNT(*)', 'count')
      .from('outing', 'o')
      .where('o.out_at >= :from AND o.out_at < :after', {
        from: `${from}T00:00:00.000Z`,
        after: new Date(Date.parse(until) + DAY_MS).toISOString(),
      })
      .getRawOne<{ count: string }>();
    const count = Number(row?.count ?? 0);
    return count === 0 ? null : count;
  }
}
