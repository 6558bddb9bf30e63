import { type DynamicModule, Module } from '@nestjs/common';
import { DeterminationsRepository } from './database/determinations.repository.js';
import { DeterminationController } from './determination.controller.js';
import { DeterminationService } from './determination.service.js';
import { Determinations } from './determinations.js';
import { IncidentDeterminations } from './incident-determinations.js';
import { IncidentDeterminationsController } from './incident-determinations.controller.js';
import { LawChange } from './law-change.js';
import { Law } from './law-in-force.js';
import { ScopeAnswers } from './scope-answers.js';

/** What the law calls for: on facts that somebody sends, and on the record of each incident, kept. */
@Module({ controllers: [DeterminationController, IncidentDeterminationsController] })
export class DeterminationModule {
  static with(law: Law): DynamicModule {
    return {
      module: DeterminationModule,
      global: true,
      providers: [
        { provide: Law, useValue: law },
        DeterminationService,
        DeterminationsRepository,
        Determinations,
        IncidentDeterminations,
        LawChange,
        ScopeAnswers,
      ],
      exports: [Determinations, Law],
    };
  }
}
