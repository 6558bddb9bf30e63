import { type DynamicModule, Module } from '@nestjs/common';
import { OutingModule } from '../outing/outing.api.js';
import { RetentionRepository } from './database/retention.repository.js';
import { DeletionSteps } from './deletion-steps.js';
import { IncidentSubjects } from './incident-subjects.js';
import { KeptWithIncident } from './kept-with-incident.js';
import { MonthSubjects } from './month-subjects.js';
import { RetentionChoices } from './retention-choices.service.js';
import { RetentionController } from './retention.controller.js';
import { RetentionDecisions } from './retention-decisions.service.js';
import { RetentionForms } from './retention-forms.js';
import { RetentionList } from './retention-list.service.js';

/** How long what is kept, and what people decide once its time is over. */
@Module({ imports: [OutingModule], controllers: [RetentionController] })
export class RetentionModule {
  static with(forms: RetentionForms): DynamicModule {
    return {
      module: RetentionModule,
      providers: [
        { provide: RetentionForms, useValue: forms },
        RetentionRepository,
        RetentionChoices,
        IncidentSubjects,
        MonthSubjects,
        KeptWithIncident,
        RetentionList,
        DeletionSteps,
        RetentionDecisions,
      ],
    };
  }
}
