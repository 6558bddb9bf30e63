import { Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { CheckedBackupRow } from './checked-backup.row.js';

export const BACKUP_ROWS = [CheckedBackupRow];

@Injectable()
export class CheckedBackupsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  async add(backup: CheckedBackupRow): Promise<void> {
    await this.unitOfWork.manager.insert(CheckedBackupRow, backup);
  }

  /** The newest first. */
  latest(limit: number): Promise<CheckedBackupRow[]> {
    return this.unitOfWork.manager.find(CheckedBackupRow, {
      order: { madeAt: 'DESC', id: 'DESC' },
      take: limit,
    });
  }
}
