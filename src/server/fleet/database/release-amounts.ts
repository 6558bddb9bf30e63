import type { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { PageRequest } from '../../platform/http/cursor.js';
import { ReleaseAmountRow } from './release-amount.row.js';

/** The amounts that the owner named, one after the other. */
export class ReleaseAmounts {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** The one that counts now; null while none was named. */
  async latest(): Promise<ReleaseAmountRow | null> {
    const [latest] = await this.page({ limit: 0, after: null });
    return latest ?? null;
  }

  /** One more than the page holds, the newest first. */
  async page({ limit, after }: PageRequest): Promise<ReleaseAmountRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(ReleaseAmountRow, 'amount')
      .orderBy('amount.version', 'DESC')
      .limit(limit + 1);
    if (after !== null) query.where('amount.version < :before', { before: Number(after.sort) });
    return query.getMany();
  }

  find(id: string): Promise<ReleaseAmountRow | null> {
    return this.unitOfWork.manager.findOneBy(ReleaseAmountRow, { id });
  }

  async add(amount: ReleaseAmountRow): Promise<void> {
    await this.unitOfWork.manager.insert(ReleaseAmountRow, amount);
  }
}
