import { Injectable } from '@nestjs/common';
import { IsNull } from 'typeorm';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import type { Cursor, PageRequest } from '../../platform/http/cursor.js';
import { DeviceRow } from './device.row.js';

@Injectable()
export class DevicesRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  find(id: string): Promise<DeviceRow | null> {
    return this.unitOfWork.manager.findOneBy(DeviceRow, { id });
  }

  findByCode(codeHash: string): Promise<DeviceRow | null> {
    return this.unitOfWork.manager.findOneBy(DeviceRow, { codeHash, revokedAt: IsNull() });
  }

  findByToken(tokenHash: string): Promise<DeviceRow | null> {
    return this.unitOfWork.manager.findOneBy(DeviceRow, { tokenHash, revokedAt: IsNull() });
  }

  /** One more than the page holds, in the order in which they were made. */
  page({ limit, after }: PageRequest): Promise<DeviceRow[]> {
    const query = this.unitOfWork.manager
      .createQueryBuilder(DeviceRow, 'device')
      .orderBy('device.createdAt')
      .addOrderBy('device.id')
      .limit(limit + 1);
    if (after !== null) {
      query.where('device.createdAt > :sort OR (device.createdAt = :sort AND device.id > :id)', { ...after });
    }
    return query.getMany();
  }

  static cursorOf({ createdAt, id }: DeviceRow): Cursor {
    return { sort: createdAt, id };
  }

  async add(device: DeviceRow): Promise<void> {
    await this.unitOfWork.manager.insert(DeviceRow, device);
  }

  async change(id: string, change: Partial<DeviceRow>): Promise<void> {
    await this.unitOfWork.manager.update(DeviceRow, { id }, change);
  }
}
