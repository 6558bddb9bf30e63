import { type DynamicModule, Module, type OnApplicationShutdown, type OnModuleInit } from '@nestjs/common';
import { FileStore } from '../platform/storage/file-store.js';
import { clearHalfWritten } from '../platform/storage/durable-files.js';
import { FolderStore } from '../platform/storage/folder-store.js';
import { IncomingFiles } from '../platform/storage/incoming-files.js';
import { CustodyController } from './custody.controller.js';
import { CustodyService } from './custody.service.js';
import { UploadsRepository } from './database/uploads.repository.js';
import { EvidenceAccess } from './evidence-access.js';
import { CustodyItems, EvidenceFiles, OutsideItems } from './evidence-lists.js';
import { EvidenceSettings } from './evidence-settings.js';
import { EvidenceDeletion } from './evidence-deletion.js';
import { FilesController } from './files.controller.js';
import { FilesService } from './files.service.js';
import { OutsideController } from './outside.controller.js';
import { OutsideService } from './outside.service.js';
import { Previews } from './previews.js';
import { UploadArrival } from './upload-arrival.js';
import { UploadTurns } from './upload-turns.js';
import { UploadsController } from './uploads.controller.js';
import { UploadsService } from './uploads.service.js';
import { WithdrawalService } from './withdrawal.service.js';
import { WithdrawnFiles } from './withdrawn-files.js';

/** Files, things and what others hold, as evidence of an incident. */
@Module({ controllers: [UploadsController, FilesController, CustodyController, OutsideController] })
export class EvidenceModule implements OnModuleInit, OnApplicationShutdown {
  constructor(
    private readonly settings: EvidenceSettings,
    private readonly previews: Previews,
  ) {}

  static with(settings: EvidenceSettings): DynamicModule {
    const { folder } = settings;
    return {
      module: EvidenceModule,
      global: true,
      providers: [
        { provide: EvidenceSettings, useValue: settings },
        { provide: FileStore, useFactory: () => new FolderStore(folder) },
        { provide: IncomingFiles, useFactory: () => new IncomingFiles(folder) },
        {
          provide: Previews,
          inject: [FileStore],
          useFactory: (store: FileStore) => new Previews(folder, store),
        },
        UploadTurns,
        UploadsRepository,
        EvidenceFiles,
        CustodyItems,
        OutsideItems,
        EvidenceAccess,
        UploadArrival,
        UploadsService,
        FilesService,
        WithdrawnFiles,
        WithdrawalService,
        EvidenceDeletion,
        CustodyService,
        OutsideService,
      ],
      exports: [EvidenceDeletion],
    };
  }

  /** What a crash left half written would else outlive the withdrawal of what it is a part of. */
  async onModuleInit(): Promise<void> {
    await clearHalfWritten(this.settings.folder);
  }

  /** A preview under way is finished before the process ends. */
  async onApplicationShutdown(): Promise<void> {
    await this.previews.settled();
  }
}
