import { type DynamicModule, Module, type Type } from '@nestjs/common';
import { RecordSettings } from '../record/record.api.js';
import { CalendarFeedsController } from './calendar-feeds.controller.js';
import { CalendarFeeds } from './calendar-feeds.service.js';
import { CalendarOwners } from './calendar-owners.js';
import { CalendarController } from './calendar.controller.js';
import { CalendarFeedsRepository } from './database/calendar-feeds.repository.js';
import { CalendarTasksRepository } from './database/calendar-tasks.repository.js';
import { DigestWatch } from './digest-watch.js';
import { FollowUpForms } from './follow-up-forms.js';

/** What reaches people outside the desk: the calendar of their tasks and the digest of the day. */
@Module({ controllers: [CalendarFeedsController, CalendarController] })
export class CalendarModule {
  /**
   * @param accounts the module that gives accounts and roster
   * @param settings those of the record, whose days are the days of the business
   */
  static with(accounts: Type, forms: FollowUpForms, settings: RecordSettings): DynamicModule {
    return {
      module: CalendarModule,
      imports: [accounts],
      providers: [
        { provide: FollowUpForms, useValue: forms },
        { provide: RecordSettings, useValue: settings },
        CalendarFeedsRepository,
        CalendarTasksRepository,
        CalendarOwners,
        CalendarFeeds,
        DigestWatch,
      ],
      exports: [DigestWatch],
    };
  }
}
