import type { ServiceStep } from '../../../../shared/record/service-step.js';
import type { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { PageRequest } from '../../platform/http/cursor.js';
import { CraftRow } from './craft.row.js';
import { ServiceStepRow } from './service-step.row.js';

/** The steps of service, craft by craft. */
export class ServiceSteps {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** All steps of a craft, the first one first. */
  async of(craftId: string): Promise<ServiceStep[]> {
    const rows = await this.unitOfWork.manager.find(ServiceStepRow, {
      where: { craftId },
      order: { sequence: 'ASC' },
    });
    return rows.map(({ step }) => step);
  }

  /** One more than the page holds, the newest first. */
  async page(craftId: string, { limit, after }: PageRequest): Promise<ServiceStepRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(ServiceStepRow, 'step')
      .where('step.craftId = :craftId', { craftId })
      .orderBy('step.sequence', 'DESC')
      .limit(limit + 1);
    if (after !== null) query.andWhere('step.sequence < :before', { before: Number(after.sort) });
    return query.getMany();
  }

  find(id: string): Promise<ServiceStepRow | null> {
    return this.unitOfWork.manager.findOneBy(ServiceStepRow, { id });
  }

  /** Craft that an incident has ever kept in. */
  async craftOf(incidentId: string): Promise<string[]> {
    const rows = await this.unitOfWork.manager
      .createQueryBuilder(ServiceStepRow, 'step')
      .select('DISTINCT step.craftId', 'craft')
      .where('step.incidentId = :incidentId', { incidentId })
      .orderBy('craft')
      .getRawMany<{ craft: string }>();
    return rows.map(({ craft }) => craft);
  }

  /** Adds a step, and what all of them now come to. */
  async add(row: ServiceStepRow, inService: boolean): Promise<void> {
    const { manager } = this.unitOfWork;
    await manager.insert(ServiceStepRow, row);
    await manager.update(CraftRow, { id: row.craftId }, { inService });
  }
}
