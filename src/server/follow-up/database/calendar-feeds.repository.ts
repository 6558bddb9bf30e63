import { Injectable } from '@nestjs/common';
import { IsNull } from 'typeorm';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { CalendarFeedRow } from './calendar-feed.row.js';

@Injectable()
export class CalendarFeedsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  /** The feed that is not revoked; a person has one at most. */
  ofAccount(accountId: string): Promise<CalendarFeedRow | null> {
    return this.unitOfWork.manager.findOneBy(CalendarFeedRow, { accountId, revokedAt: IsNull() });
  }

  /** The feed behind a secret, unless it was revoked. */
  behind(secretHash: string): Promise<CalendarFeedRow | null> {
    return this.unitOfWork.manager.findOneBy(CalendarFeedRow, { secretHash, revokedAt: IsNull() });
  }

  find(id: string): Promise<CalendarFeedRow | null> {
    return this.unitOfWork.manager.findOneBy(CalendarFeedRow, { id });
  }

  async add(feed: CalendarFeedRow): Promise<void> {
    await this.unitOfWork.manager.insert(CalendarFeedRow, feed);
  }

  async revoke(id: string, revokedAt: string): Promise<void> {
    await this.unitOfWork.manager.update(CalendarFeedRow, { id }, { revokedAt });
  }
}
