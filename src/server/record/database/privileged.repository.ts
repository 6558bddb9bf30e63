import { Injectable } from '@nestjs/common';
import { In } from 'typeorm';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { CounselRequestRow, PrivilegedEntryRow } from './aside.row.js';

@Injectable()
export class PrivilegedRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  async addRequest(row: CounselRequestRow): Promise<void> {
    await this.unitOfWork.manager.insert(CounselRequestRow, row);
  }

  requests(incidentId: string): Promise<CounselRequestRow[]> {
    return this.unitOfWork.manager.find(CounselRequestRow, {
      where: { incidentId },
      order: { enteredAt: 'ASC' },
    });
  }

  /** With what was written under them. */
  async remove(requestIds: readonly string[]): Promise<void> {
    const { manager } = this.unitOfWork;
    await manager.delete(PrivilegedEntryRow, { requestId: In([...requestIds]) });
    await manager.delete(CounselRequestRow, { id: In([...requestIds]) });
  }

  requestsOf(incidentIds: readonly string[]): Promise<CounselRequestRow[]> {
    return this.unitOfWork.manager.findBy(CounselRequestRow, { incidentId: In([...incidentIds]) });
  }

  allRequests(): Promise<CounselRequestRow[]> {
    return this.unitOfWork.manager.find(CounselRequestRow);
  }

  allEntries(): Promise<PrivilegedEntryRow[]> {
    return this.unitOfWork.manager.find(PrivilegedEntryRow);
  }

  async addEntry(row: PrivilegedEntryRow): Promise<void> {
    await this.unitOfWork.manager.insert(PrivilegedEntryRow, row);
  }

  entries(requestIds: readonly string[]): Promise<PrivilegedEntryRow[]> {
    return this.unitOfWork.manager.find(PrivilegedEntryRow, {
      where: { requestId: In([...requestIds]) },
      order: { writtenAt: 'ASC' },
    });
  }
}
