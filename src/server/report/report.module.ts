import { type DynamicModule, Module } from '@nestjs/common';
import type { ReportForm } from '../../../shared/report/report-form.js';
import { Decisions } from '../decision/decision.api.js';
import { Determinations } from '../determination/determination.api.js';
import { Fleet } from '../fleet/fleet.api.js';
import { Clock } from '../platform/clock.js';
import { ServiceSections } from '../record/record.api.js';
import { ReportBook } from './report-book.js';
import { ReportNotesService } from './report-notes.service.js';
import { ReportReader } from './report-reader.js';
import { ReportsController } from './reports.controller.js';
import { ReportsService } from './reports.service.js';

/** The official accident report: what it holds, what it lacks, and its worksheet. */
@Module({ controllers: [ReportsController] })
export class ReportModule {
  static with(form: ReportForm): DynamicModule {
    return {
      module: ReportModule,
      providers: [
        ReportBook,
        {
          provide: ReportReader,
          useFactory: (...parts: Parts) => new ReportReader(form, ...parts),
          inject: [ServiceSections, ReportBook, Determinations, Decisions, Fleet, Clock],
        },
        ReportsService,
        ReportNotesService,
      ],
    };
  }
}

type Parts = [ServiceSections, ReportBook, Determinations, Decisions, Fleet, Clock];
