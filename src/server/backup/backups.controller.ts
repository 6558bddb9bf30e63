import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { MayUse } from '../platform/http/may-use.js';
import type { CheckedBackupRow } from './database/checked-backup.row.js';
import { CheckedBackupsRepository } from './database/checked-backups.repository.js';

const SHOWN = 10;

/** Copies of the desk: made on the command line, seen here. */
@ApiTags('service')
@Controller('api/backups')
export class BackupsController {
  constructor(private readonly backups: CheckedBackupsRepository) {}

  @Get()
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'listBackups',
    summary: 'The last ten copies of the desk and what their check found, the newest first',
    answer: 'CheckedBackupList',
  })
  async list(): Promise<{ items: CheckedBackupRow[] }> {
    return { items: await this.backups.latest(SHOWN) };
  }
}
