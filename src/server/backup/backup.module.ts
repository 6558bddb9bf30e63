import { Module } from '@nestjs/common';
import { BackupsController } from './backups.controller.js';
import { CheckedBackupsRepository } from './database/checked-backups.repository.js';

/** What the desk knows of its own copies. */
@Module({ controllers: [BackupsController], providers: [CheckedBackupsRepository] })
export class BackupModule {}
