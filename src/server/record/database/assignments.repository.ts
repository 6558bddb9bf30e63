import { Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { CounselAssignmentRow } from './assignment.row.js';

@Injectable()
export class AssignmentsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  async add(row: CounselAssignmentRow): Promise<void> {
    await this.unitOfWork.manager.insert(CounselAssignmentRow, row);
  }

  async remove({ incidentId, accountId }: CounselAssignmentRow): Promise<void> {
    await this.unitOfWork.manager.delete(CounselAssignmentRow, { incidentId, accountId });
  }

  all(): Promise<CounselAssignmentRow[]> {
    return this.unitOfWork.manager.find(CounselAssignmentRow);
  }
}
