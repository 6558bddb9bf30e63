import { type DynamicModule, Module } from '@nestjs/common';
import { OutingModule } from '../outing/outing.api.js';
import { ClaimsClocks } from './claims-clocks.service.js';
import { ClaimStartsRepository } from './database/claim-starts.repository.js';
import { HouseRepository } from './database/house.repository.js';
import { TasksRepository } from './database/tasks.repository.js';
import { DutyCrew } from './duty-crew.js';
import { EscalationWatch } from './escalation-watch.js';
import { Escalations } from './escalations.service.js';
import { FiledWork } from './filed-work.js';
import { FollowUpForms } from './follow-up-forms.js';
import { FollowUp } from './follow-up.service.js';
import { HandOvers } from './hand-overs.service.js';
import { HouseRules } from './house-rules.service.js';
import { HouseController } from './house.controller.js';
import { IncidentCrafts } from './incident-craft.js';
import { IncidentFollowUpController } from './incident-follow-up.controller.js';
import { IncidentFollowUp } from './incident-follow-up.service.js';
import { NoticeAddresses } from './notice-addresses.service.js';
import { ReopeningNotices } from './reopening-notices.js';
import { RequestWork } from './request-work.js';
import { TaskLists } from './task-lists.service.js';
import { TaskPlanner } from './task-planner.js';
import { TasksController } from './tasks.controller.js';
import { TasksService } from './tasks.service.js';
import { WorkDeletion } from './work-deletion.js';
import { WorkController } from './work.controller.js';

/** The work after an incident: who does what by when, until it is finished. */
@Module({
  imports: [OutingModule],
  controllers: [TasksController, IncidentFollowUpController, WorkController, HouseController],
})
export class FollowUpModule {
  static with(forms: FollowUpForms): DynamicModule {
    return {
      module: FollowUpModule,
      global: true,
      providers: [
        { provide: FollowUpForms, useValue: forms },
        TasksRepository,
        ClaimStartsRepository,
        HouseRepository,
        ClaimsClocks,
        FiledWork,
        RequestWork,
        TaskPlanner,
        TaskLists,
        TasksService,
        DutyCrew,
        EscalationWatch,
        Escalations,
        IncidentCrafts,
        IncidentFollowUp,
        HandOvers,
        HouseRules,
        NoticeAddresses,
        ReopeningNotices,
        FollowUp,
        WorkDeletion,
      ],
      exports: [DutyCrew, EscalationWatch, FollowUp, NoticeAddresses, WorkDeletion],
    };
  }
}
