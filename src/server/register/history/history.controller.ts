import { Controller, Get, Query, Res, StreamableFile } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { CurrentPerson, type PersonActor } from '../../accounts/accounts.api.js';
import { DescribeRoute } from '../../platform/http/describe-route.js';
import { MayUse } from '../../platform/http/may-use.js';
import { RecordSettings } from '../../record/record.api.js';
import { drawHistory } from './draw-history.js';
import { IncidentHistoryService } from './history.service.js';
import { writeHistoryWorkbook } from './write-history-workbook.js';

const PERIOD = { from: '2026-01-01', until: '2026-12-31' };
const UNUSABLE = { 422: 'The query cannot be used.' };
const XLSX = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet';

/** Incidents of a period for whoever renews a policy: counts and sums, no names. */
@ApiTags('register')
@Controller('api/incident-history')
export class HistoryController {
  constructor(
    private readonly history: IncidentHistoryService,
    private readonly settings: RecordSettings,
  ) {}

  @Get()
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'readIncidentHistory',
    summary:
      'The incidents of a period by month, craft, station and type, with people, damage and what was paid',
    query: PERIOD,
    answer: 'IncidentHistory',
    refuses: UNUSABLE,
  })
  read(@Query() query: unknown): Promise<object> {
    return this.history.read(query);
  }

  @Get('workbook')
  @MayUse('manager', 'administrator')
  @ApiProduces(XLSX)
  @DescribeRoute({
    operationId: 'downloadIncidentHistoryWorkbook',
    summary: 'The same as a workbook',
    query: PERIOD,
    status: 200,
    refuses: UNUSABLE,
  })
  async workbook(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Query() query: unknown,
  ): Promise<StreamableFile> {
    const history = await this.history.read(query);
    void reply.header('cache-control', 'no-store');
    return new StreamableFile(await writeHistoryWorkbook(history), {
      type: XLSX,
      disposition: `attachment; filename="incident-history-${history.from}-${history.until}.xlsx"`,
    });
  }

  @Get('paper')
  @MayUse('manager', 'administrator')
  @ApiProduces('application/pdf')
  @DescribeRoute({
    operationId: 'downloadIncidentHistoryPaper',
    summary: 'The same as PDF',
    query: PERIOD,
    status: 200,
    refuses: UNUSABLE,
  })
  async paper(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Query() query: unknown,
    @CurrentPerson() actor: PersonActor,
  ): Promise<StreamableFile> {
    const history = await this.history.read(query);
    void reply.header('cache-control', 'no-store');
    return new StreamableFile(drawHistory(history, actor.personName, this.settings.timeZone), {
      type: 'application/pdf',
      disposition: `attachment; filename="incident-history-${history.from}-${history.until}.pdf"`,
    });
  }
}
