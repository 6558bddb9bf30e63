import { Body, Controller, Get, Headers, Param, Put, Res, StreamableFile } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import { ReportNotesDto } from '../../../shared/wire/report-requests.dto.js';
import { CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerVersioned } from '../platform/http/entity-tag.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { ReportNotesService } from './report-notes.service.js';
import { ReportsService } from './reports.service.js';

const INCIDENT = { id: 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03' };
const REPORT = { ...INCIDENT, report: 'c1.owner' };
const NO_INCIDENT = { 404: 'There is no such incident for you.' };
const NO_REPORT = { 404: 'There is no such incident for you, or no such report in it.' };

/** The official accident report of an incident, one for each vessel and reporter. */
@ApiTags('report')
@Controller('api/incidents/:id')
export class ReportsController {
  constructor(
    private readonly reports: ReportsService,
    private readonly notes: ReportNotesService,
  ) {}

  @Get('reports')
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'listReports',
    summary: 'The official reports, one for each vessel and reporter, with how far each is filled in',
    params: INCIDENT,
    answer: 'ReportList',
    refuses: NO_INCIDENT,
  })
  list(@Param('id') id: string, @CurrentPerson() actor: PersonActor): Promise<object> {
    return this.reports.list(id, actor);
  }

  @Get('report-lacks')
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'listReportLacks',
    summary: 'What the official reports still lack, by the section of the record where it is written',
    params: INCIDENT,
    answer: 'ReportLacks',
    refuses: NO_INCIDENT,
  })
  lacks(@Param('id') id: string, @CurrentPerson() actor: PersonActor): Promise<object> {
    return this.reports.lacks(id, actor);
  }

  @Get('reports/:report')
  @MayUse('manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'readReport',
    summary: 'One official report, item by item: answered, known not to be known, or missing',
    params: REPORT,
    answer: 'FilledReport',
    refuses: NO_REPORT,
  })
  read(
    @Param('id') id: string,
    @Param('report') report: string,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.reports.read(id, report, actor);
  }

  @Get('reports/:report/worksheet')
  @MayUse('manager', 'administrator', 'counsel')
  @ApiProduces('application/pdf')
  @DescribeRoute({
    operationId: 'printReportWorksheet',
    summary: 'The same as a tagged PDF, to copy onto the agency’s form or to attach',
    description: 'Who printed which content is kept with the incident.',
    params: REPORT,
    status: 200,
    refuses: NO_REPORT,
  })
  async worksheet(
    @Param('id') id: string,
    @Param('report') report: string,
    @CurrentPerson() actor: PersonActor,
  ): Promise<StreamableFile> {
    const { name, content } = await this.reports.worksheet(id, report, actor);
    return new StreamableFile(content, {
      type: 'application/pdf',
      disposition: `inline; filename="${name}"`,
    });
  }

  @Get('reports/:report/notes')
  @MayUse('manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'readReportNotes',
    summary: 'What stands on a report beside the record: who submits it, an opinion, what cannot be known',
    params: REPORT,
    answer: 'KeptReportNotes',
    refuses: NO_REPORT,
  })
  async readNotes(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('report') report: string,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.notes.read(id, report, actor));
  }

  @Put('reports/:report/notes')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'writeReportNotes',
    summary: 'Writes them anew; what is left out is taken away',
    description:
      'An opinion of the cause is never asked for: it may be used against the business. Speak with counsel first.',
    params: REPORT,
    body: 'ReportNotes',
    answer: 'KeptReportNotes',
    versioned: true,
    refuses: { ...NO_REPORT, 409: 'The opinion in a customer’s own report is the customer’s.' },
  })
  async writeNotes(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('report') report: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    const sent = readInput(readRecordInput(ReportNotesDto, body));
    return answerVersioned(reply, await this.notes.write(id, report, sent, ifMatch, actor));
  }
}
