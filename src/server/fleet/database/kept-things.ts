import { randomUUID } from 'node:crypto';
import { type FindOptionsWhere, In, type QueryDeepPartialEntity } from 'typeorm';
import type { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { PageRequest } from '../../platform/http/cursor.js';
import type { ByRow } from './by.row.js';
import type { KeptRow } from './kept.row.js';
import { KeptVersionRow } from './kept-version.row.js';

export type KeptKind = 'craft' | 'station' | 'place' | 'policy';

/** The rows of one kind of thing that is kept in versions. */
export class KeptThings<Row extends KeptRow> {
  constructor(
    private readonly unitOfWork: UnitOfWork,
    private readonly kind: KeptKind,
    private readonly row: new () => Row,
  ) {}

  find(id: string): Promise<Row | null> {
    return this.unitOfWork.manager.findOneBy(this.row, { id } as FindOptionsWhere<Row>);
  }

  /** All that are in use, by name. */
  async inUse(): Promise<Row[]> {
    return this.ordered().where('thing.retiredOn IS NULL').getMany();
  }

  /** One more than the page holds, by name. */
  async page({ limit, after }: PageRequest, retiredToo: boolean): Promise<Row[]> {
    const query = this.ordered().limit(limit + 1);
    if (!retiredToo) query.andWhere('thing.retiredOn IS NULL');
    if (after !== null) {
      const place = '(thing.sortKey > :sort OR (thing.sortKey = :sort AND thing.id > :id))';
      query.andWhere(place, { ...after });
    }
    return query.getMany();
  }

  /** Which of the ids are of no row. */
  async missing(ids: readonly string[]): Promise<Set<string>> {
    const where = { id: In([...ids]) } as FindOptionsWhere<Row>;
    const found = ids.length === 0 ? [] : await this.unitOfWork.manager.findBy(this.row, where);
    const known = new Set(found.map(({ id }) => id));
    return new Set(ids.filter((id) => !known.has(id)));
  }

  async add(row: Row, details: object, by: ByRow): Promise<void> {
    await this.unitOfWork.manager.insert(this.row, row as QueryDeepPartialEntity<Row>);
    await this.addVersion(row, details, by);
  }

  async change(row: Row, details: object, by: ByRow): Promise<void> {
    const where = { id: row.id } as FindOptionsWhere<Row>;
    await this.unitOfWork.manager.update(this.row, where, row as QueryDeepPartialEntity<Row>);
    await this.addVersion(row, details, by);
  }

  /** One more than the page holds, the newest first. */
  async versions(thingId: string, { limit, after }: PageRequest): Promise<KeptVersionRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(KeptVersionRow, 'version')
      .where('version.thingId = :thingId', { thingId })
      .orderBy('version.version', 'DESC')
      .limit(limit + 1);
    if (after !== null) query.andWhere('version.version < :before', { before: Number(after.sort) });
    return query.getMany();
  }

  /** What was written down of it by then; null before its first version. */
  async versionAsOf(thingId: string, instant: string): Promise<KeptVersionRow | null> {
    return this.unitOfWork.manager
      .createQueryBuilder(KeptVersionRow, 'version')
      .where('version.thingId = :thingId AND version.recordedAt <= :instant', { thingId, instant })
      .orderBy('version.version', 'DESC')
      .limit(1)
      .getOne();
  }

  private ordered() {
    return this.unitOfWork.manager
      .createQueryBuilder(this.row, 'thing')
      .orderBy('thing.sortKey')
      .addOrderBy('thing.id');
  }

  private async addVersion({ id: thingId, version }: Row, details: object, by: ByRow): Promise<void> {
    const { kind } = this;
    await this.unitOfWork.manager.insert(KeptVersionRow, {
      id: randomUUID(),
      thingId,
      kind,
      version,
      details,
      ...by,
    });
  }
}
