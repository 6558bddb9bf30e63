import { type DynamicModule, Module, type OnApplicationShutdown } from '@nestjs/common';
import { AssignmentsController } from './assignments.controller.js';
import { AssignmentsService } from './assignments.service.js';
import { AmendmentsRepository } from './database/amendments.repository.js';
import { AssignmentsRepository } from './database/assignments.repository.js';
import { DraftsRepository } from './database/drafts.repository.js';
import { IncidentsRepository } from './database/incidents.repository.js';
import { LogRepository } from './database/log.repository.js';
import { PrivilegedRepository } from './database/privileged.repository.js';
import { CraftTaking } from './craft-taking.js';
import { DeletionStops } from './deletion-stops.js';
import { DraftsService } from './drafts.service.js';
import { HeadsFile } from './heads-file.js';
import { HistoryService } from './history.service.js';
import { HoldsController } from './holds.controller.js';
import { Holds } from './holds.js';
import { HoldsService } from './holds.service.js';
import { IncidentAccess } from './incident-access.js';
import { IncidentProofs } from './incident-proofs.js';
import { IncidentsController } from './incidents.controller.js';
import { IncidentsService } from './incidents.service.js';
import { PrivilegedController } from './privileged.controller.js';
import { PrivilegedService } from './privileged.service.js';
import { RecordChanges } from './record-changes.js';
import { RecordContents } from './record-contents.js';
import { RecordDeletion } from './record-deletion.js';
import { RecordLog } from './record-log.js';
import { RecordSettings } from './record-settings.js';
import { SectionWriter } from './section-writer.js';
import { ServiceSections } from './service-sections.js';
import { SectionsController } from './sections.controller.js';
import { SectionsService } from './sections.service.js';
import { WithdrawnContent } from './withdrawn-content.js';
import { WithdrawalsService } from './withdrawals.service.js';

@Module({
  controllers: [
    IncidentsController,
    SectionsController,
    HoldsController,
    AssignmentsController,
    PrivilegedController,
  ],
})
export class RecordModule implements OnApplicationShutdown {
  constructor(private readonly heads: HeadsFile) {}

  static with(settings: RecordSettings): DynamicModule {
    return {
      module: RecordModule,
      global: true,
      providers: [
        { provide: RecordSettings, useValue: settings },
        { provide: HeadsFile, useFactory: () => new HeadsFile(settings.headsFile) },
        LogRepository,
        AmendmentsRepository,
        IncidentsRepository,
        DraftsRepository,
        PrivilegedRepository,
        AssignmentsRepository,
        RecordChanges,
        DeletionStops,
        RecordContents,
        RecordDeletion,
        RecordLog,
        SectionWriter,
        WithdrawnContent,
        IncidentAccess,
        ServiceSections,
        IncidentProofs,
        CraftTaking,
        Holds,
        HoldsService,
        AssignmentsService,
        IncidentsService,
        SectionsService,
        DraftsService,
        WithdrawalsService,
        HistoryService,
        PrivilegedService,
      ],
      exports: [
        RecordSettings,
        Holds,
        DeletionStops,
        RecordContents,
        RecordDeletion,
        RecordChanges,
        ServiceSections,
        IncidentAccess,
        IncidentProofs,
        PrivilegedService,
        IncidentsService,
        SectionsService,
        HistoryService,
      ],
    };
  }

  async onApplicationShutdown(): Promise<void> {
    await this.heads.close();
  }
}
