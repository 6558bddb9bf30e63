import { Injectable } from '@nestjs/common';
import { Brackets } from 'typeorm';
import type { Filing } from '../../../../shared/decision/filing.js';
import type { Outcome } from '../../../../shared/determination/determination.js';
import type { IncidentStatus } from '../../../../shared/record/incident-record.js';
import { joinSummaries } from '../../../../shared/record/summarize-section.js';
import type { RegisterOrder } from '../../../../shared/wire/register-queries.dto.js';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { Cursor } from '../../platform/http/cursor.js';
import type { RegisterClock, RegisterDuty, RegisterLine, RegisterTask } from '../register-rows.js';
import { assignedTo, filterRegister, type Query, type ReadableFilter } from './filter-register.js';

type Head = Omit<RegisterLine, 'duties' | 'tasks'>;
type Summaries = Parameters<typeof joinSummaries>[0];
type Cells = Record<string, string | number | boolean | null>;

/** A line with the text that it is sorted by. */
interface PlacedHead {
  readonly head: Head;
  readonly sort: string;
}

interface HeadsWanted {
  readonly order?: RegisterOrder | undefined;
  readonly after: Cursor | null;
  readonly limit: number;
}

/**
 * The register reads the tables of other modules by their names and writes none: a page of it is three queries, and
 * one of clocks a single one, however many incidents there are.
 */
@Injectable()
export class RegisterRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** In an order, behind a place in it. */
  async heads(
    filter: ReadableFilter,
    now: string,
    { order = 'latest', after, limit }: HeadsWanted,
  ): Promise<PlacedHead[]> {
    const { by, direction } = ORDERS[order];
    const query = this.filtered(filter, now)
      .select('i.id', 'id')
      .addSelect('i.reference', 'reference')
      .addSelect('i.status', 'status')
      .addSelect('i.opened_at', 'openedAt')
      .addSelect('i.updated_at', 'updatedAt')
      .addSelect('i.version', 'version')
      .addSelect('i.summary', 'summary')
      .addSelect(by, 'sort')
      .orderBy('sort', direction)
      .addOrderBy('i.id', direction)
      .setParameter('notSettled', false)
      .limit(limit);
    if (after !== null) behind(query, order, after);
    const rows = await query.getRawMany<Omit<Head, 'summary'> & { summary: string; sort: string }>();
    return rows.map(({ summary, sort, ...head }) => ({
      head: {
        ...head,
        summary: joinSummaries(JSON.parse(summary) as Summaries),
      },
      sort,
    }));
  }

  async count(filter: ReadableFilter, now: string): Promise<number> {
    const row = await this.filtered(filter, now).select('COUNT(*)', 'count').getRawOne<{ count: string }>();
    return Number(row?.count ?? 0);
  }

  /** Of some incidents, the ones with the nearest time first. */
  async duties(incidents: readonly string[], now: string): Promise<Map<string, RegisterDuty[]>> {
    const rows = await this.of('duty_state', 'd', incidents)
      .select(DUTY_COLUMNS)
      .orderBy('d.due_order')
      .addOrderBy('d.id')
      .getRawMany<Cells>();
    return grouped(rows, (row) => dutyOf(row, now));
  }

  /**
   * Reports of all incidents that are not settled, the one that is due soonest first, behind a place in that order. One
   * that is not required counts only where something that was filed has to be mended.
   */
  async clocks(
    now: string,
    after: Cursor | null,
    limit: number,
    counselAccount?: string,
  ): Promise<(RegisterClock & { dueOrder: string; id: string })[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder()
      .from('duty_state', 'd')
      .innerJoin('incident', 'i', 'i.id = d.incident_id')
      .select('d.*')
      .addSelect('i.reference', 'reference')
      .addSelect('i.status', 'status')
      .addSelect('i.summary', 'summary')
      .where('d.settled = :unsettled', { unsettled: false })
      .andWhere("(d.outcome <> 'not-required' OR d.supplement_due = :mended)", { mended: true })
      .orderBy('d.due_order')
      .addOrderBy('d.id')
      .limit(limit);
    if (counselAccount !== undefined) assignedTo(query, counselAccount);
    if (after !== null) {
      query.andWhere('(d.due_order > :sort OR (d.due_order = :sort AND d.id > :id))', { ...after });
    }
    return (await query.getRawMany<Cells>()).map((row) => {
      const { filed, settled, ...duty } = dutyOf(row, now);
      void [filed, settled];
      return {
        id: String(row['id']),
        dueOrder: String(row['due_order']),
        incident: String(row['incident_id']),
        reference: String(row['reference']),
        status: String(row['status']) as IncidentStatus,
        immediate: Boolean(row['immediate']),
        craft: joinSummaries(JSON.parse(String(row['summary'])) as Summaries).craft ?? [],
        ...duty,
      };
    });
  }

  /** Of some incidents, in the order in which the work is done. */
  async tasks(incidents: readonly string[]): Promise<Map<string, RegisterTask[]>> {
    const rows = await this.of('task', 't', incidents)
      .leftJoin('account', 'a', 'a.id = t.assignee_id')
      .select('t.*')
      .addSelect('a.name', 'assignee')
      .orderBy('t.task_order')
      .addOrderBy('t.id')
      .getRawMany<Record<string, string | null>>();
    return grouped(rows, (row) => ({
      incidentId: String(row['incident_id']),
      title: String(row['title']),
      owner: String(row['owner']),
      assignee: row['assignee'] ?? null,
      state: String(row['state']),
      dueAt: row['due_at'] ?? null,
      source: String(row['source']),
      updatedAt: String(row['updated_at']),
    }));
  }

  async taskCounts(incidents: readonly string[], now: string): Promise<Map<string, RegisterLine['tasks']>> {
    const rows = await this.of('task', 't', incidents)
      .select('t.incident_id', 'incident_id')
      .addSelect("SUM(CASE WHEN t.state = 'open' THEN 1 ELSE 0 END)", 'open')
      .addSelect("SUM(CASE WHEN t.state = 'open' AND t.due_at < :now THEN 1 ELSE 0 END)", 'overdue')
      .addSelect("SUM(CASE WHEN t.state = 'done' THEN 1 ELSE 0 END)", 'done')
      .setParameter('now', now)
      .groupBy('t.incident_id')
      .getRawMany<{ incident_id: string; open: string; overdue: string; done: string }>();
    return new Map(
      rows.map(({ incident_id: id, open, overdue, done }) => [
        id,
        { open: Number(open), overdue: Number(overdue), done: Number(done) },
      ]),
    );
  }

  async filings(incidents: readonly string[]): Promise<Map<string, Filing[]>> {
    const rows = await this.of('incident_section', 's', incidents)
      .select('s.incident_id', 'incident_id')
      .addSelect('s.document', 'document')
      .andWhere("s.section = 'filings'")
      .getRawMany<{ incident_id: string; document: string }>();
    return new Map(
      rows.map(({ incident_id: id, document }) => [
        id,
        (JSON.parse(document) as { filings?: Filing[] }).filings ?? [],
      ]),
    );
  }

  private of(table: string, alias: string, incidents: readonly string[]): Query {
    return this.unitOfWork.manager
      .createQueryBuilder()
      .from(table, alias)
      .where(`${alias}.incident_id IN (:...incidents)`, { incidents });
  }

  private filtered(filter: ReadableFilter, now: string): Query {
    const query: Query = this.unitOfWork.manager.createQueryBuilder().from('incident', 'i');
    return filterRegister(query, filter, now);
  }
}

/** What a line tells of a report; each cell more of each row costs. */
const DUTY_COLUMNS = [
  'incident_id',
  'duty',
  'vessel',
  'outcome',
  'due_at',
  'decision',
  'wait_until',
  'filed',
  'supplement_due',
  'settled',
  'overdue_after',
]
  .map((column) => `d.${column}`)
  .join(', ');

function dutyOf(row: Cells, now: string): RegisterDuty {
  return {
    duty: String(row['duty']),
    vessel: String(row['vessel']),
    outcome: String(row['outcome']) as Outcome,
    dueAt: textOf(row['due_at']),
    decision: textOf(row['decision']),
    waitUntil: textOf(row['wait_until']),
    filed: Boolean(row['filed']),
    supplementDue: Boolean(row['supplement_due']),
    settled: Boolean(row['settled']),
    overdue: !row['settled'] && isBefore(row['overdue_after'], now),
  };
}

/** What the lines of an order are told apart by, before their ids. */
const ORDERS: Readonly<Record<RegisterOrder, { readonly by: string; readonly direction: 'ASC' | 'DESC' }>> = {
  latest: { by: 'i.opened_at', direction: 'DESC' },
  oldest: { by: 'i.opened_at', direction: 'ASC' },
  due: {
    by: `COALESCE((SELECT MIN(o.due_order) FROM "duty_state" o
      WHERE o.incident_id = i.id AND o.settled = :notSettled), '~')`,
    direction: 'ASC',
  },
};

function behind(query: Query, order: RegisterOrder, { sort, id }: Cursor): void {
  const { by, direction } = ORDERS[order];
  const past = direction === 'ASC' ? '>' : '<';
  query.andWhere(
    new Brackets((where) =>
      where
        .where(`${by} ${past} :sort`, { sort })
        .orWhere(`(${by} = :sort AND i.id ${past} :afterId)`, { sort, afterId: id }),
    ),
  );
}

const textOf = (value: unknown): string | null => (typeof value === 'string' ? value : null);

const isBefore = (value: unknown, now: string): boolean => typeof value === 'string' && value < now;

function grouped<Row extends Record<string, unknown>, T>(
  rows: readonly Row[],
  read: (row: Row) => T,
): Map<string, T[]> {
  const groups = new Map<string, T[]>();
  for (const row of rows) {
    const id = String(row['incident_id']);
    groups.set(id, [...(groups.get(id) ?? []), read(row)]);
  }
  return groups;
}
