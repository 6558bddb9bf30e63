import { randomUUID } from 'node:crypto';
import { Injectable } from '@nestjs/common';
import { LessThanOrEqual, MoreThanOrEqual } from 'typeorm';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { PinConfirmationRow } from './pin-confirmation.row.js';

@Injectable()
export class PinConfirmationsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  async add(confirmation: Omit<PinConfirmationRow, 'id'>): Promise<void> {
    await this.unitOfWork.manager.insert(PinConfirmationRow, { id: randomUUID(), ...confirmation });
  }

  covers(deviceId: string, accountId: string, instant: string): Promise<boolean> {
    return this.unitOfWork.manager.existsBy(PinConfirmationRow, {
      deviceId,
      accountId,
      since: LessThanOrEqual(instant),
      confirmedAt: MoreThanOrEqual(instant),
    });
  }
}
