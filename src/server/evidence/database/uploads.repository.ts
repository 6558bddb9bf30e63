import { Injectable } from '@nestjs/common';
import { UnitOfWork } from '../../platform/database/unit-of-work.js';
import { UploadRow } from './upload.row.js';

@Injectable()
export class UploadsRepository {
  constructor(private readonly unitOfWork: UnitOfWork) {}

  async add(upload: UploadRow): Promise<void> {
    await this.unitOfWork.manager.insert(UploadRow, upload);
  }

  find(incidentId: string, id: string): Promise<UploadRow | null> {
    return this.unitOfWork.manager.findOneBy(UploadRow, { incidentId, id });
  }

  /** Those of an incident that have not been finished, the oldest first. */
  arriving(incidentId: string): Promise<UploadRow[]> {
    return this.unitOfWork.manager
      .createQueryBuilder(UploadRow, 'upload')
      .where('upload.incidentId = :incidentId AND upload.finishedAt IS NULL', { incidentId })
      .orderBy('upload.startedAt')
      .addOrderBy('upload.id')
      .getMany();
  }

  async finish(id: string, finishedAt: string): Promise<void> {
    await this.unitOfWork.manager.update(UploadRow, { id }, { announced: null, finishedAt });
  }

  async drop(id: string): Promise<void> {
    await this.unitOfWork.manager.delete(UploadRow, { id });
  }
}
