import { type DynamicModule, Module } from '@nestjs/common';
import { NoticesController } from './notices.controller.js';
import { NoticesService } from './notices.service.js';
import { PrintLog } from './print-log.js';
import { ReportBook } from './report-book.js';
import { ReportForms } from './report-forms.js';
import { ReportNotesService } from './report-notes.service.js';
import { ReportReader } from './report-reader.js';
import { ReportsController } from './reports.controller.js';
import { ReportsService } from './reports.service.js';

/** The official accident report: what it holds, what it lacks, its worksheet, and the notice to a customer who drove. */
@Module({ controllers: [ReportsController, NoticesController] })
export class ReportModule {
  static with(forms: ReportForms): DynamicModule {
    return {
      module: ReportModule,
      providers: [
        { provide: ReportForms, useValue: forms },
        ReportBook,
        PrintLog,
        ReportReader,
        ReportsService,
        ReportNotesService,
        NoticesService,
      ],
    };
  }
}
