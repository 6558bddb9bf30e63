import { type DynamicModule, Module } from '@nestjs/common';
import { DutyStatesRepository } from './database/duty-states.repository.js';
import { DecisionBooks } from './decision-books.js';
import { DecisionDesk } from './decision-desk.js';
import { DecisionReader } from './decision-reader.js';
import { DecisionSettings } from './decision-settings.js';
import { Decisions } from './decisions.js';
import { DecisionsController } from './decisions.controller.js';
import { FilingsController } from './filings.controller.js';

/** What is signed and filed on the duties of an incident. */
@Module({ controllers: [DecisionsController, FilingsController] })
export class DecisionModule {
  static with(settings: DecisionSettings): DynamicModule {
    return {
      module: DecisionModule,
      global: true,
      providers: [
        { provide: DecisionSettings, useValue: settings },
        DutyStatesRepository,
        DecisionBooks,
        Decisions,
        DecisionDesk,
        DecisionReader,
      ],
      exports: [Decisions],
    };
  }
}
