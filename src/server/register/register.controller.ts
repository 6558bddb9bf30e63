import { Body, Controller, Get, Headers, HttpCode, Param, Post, Query } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import { RegisterExportDto } from '../../../shared/wire/register-queries.dto.js';
import { CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { RegisterExports } from './register-exports.js';
import { RegisterService } from './register.service.js';

const FILTER = {
  'status?': 'open',
  'openedFrom?': '2026-05-01T00:00:00Z',
  'openedUntil?': '2026-10-01T00:00:00Z',
  'outcome?': 'undetermined',
  'reports?': 'overdue',
  'craft?': 'PWC 7',
  'station?': 'North dock',
  'casualty?': 'grounding',
  'hurt?': 'unknown',
  'q?': 'sandbar',
};
const params = { id: '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10' };
const NOT_THERE = { 404: 'There is no such export of yours: an hour after it was asked for it is gone.' };

@ApiTags('register')
@Controller('api')
export class RegisterController {
  constructor(
    private readonly register: RegisterService,
    private readonly exports: RegisterExports,
  ) {}

  @Get('register')
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'readRegister',
    summary: 'Incidents with how their reports and tasks stand; to counsel, those that were assigned',
    query: { 'limit?': '25', 'after?': 'WyIyMDI2IiwiYTEiXQ', 'order?': 'due', ...FILTER },
    answer: 'RegisterPage',
    refuses: { 422: 'The query cannot be used.' },
  })
  page(@Query() query: unknown, @CurrentPerson() reader: PersonActor) {
    return this.register.page(query, reader);
  }

  @Get('clocks')
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'listClocks',
    summary: 'Reports of all incidents that are not settled, the one that is due soonest first',
    description:
      'Those that cannot be told yet are among them, with the time that they would have; those without one come last.',
    query: { 'limit?': '25', 'after?': 'WyIyMDI2IiwiYTEiXQ' },
    answer: 'ClockPage',
    refuses: { 422: 'The query cannot be used.' },
  })
  clocks(@Query() query: unknown, @CurrentPerson() reader: PersonActor) {
    return this.register.clocks(query, reader);
  }

  @Get('register/count')
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'countRegister',
    summary:
      'How many incidents a query of the register finds on all its pages, and the zone of the business',
    query: { 'limit?': '25', 'order?': 'due', ...FILTER },
    answer: 'RegisterCount',
    refuses: { 422: 'The query cannot be used.' },
  })
  count(@Query() query: unknown, @CurrentPerson() reader: PersonActor) {
    return this.register.count(query, reader);
  }

  @Post('register-exports')
  @HttpCode(202)
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'startRegisterExport',
    summary: 'Begins to write the register as a workbook, or one subject of it as comma-separated values',
    body: 'RegisterExportRequest',
    answer: 'RegisterExport',
    status: 202,
    once: true,
    refuses: { 409: 'Two exports are being written already.' },
  })
  start(
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ) {
    const asked = readInput(readRecordInput(RegisterExportDto, body));
    return this.exports.start(asked, readIdempotencyKey(key), actor);
  }

  @Get('register-exports/:id')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'readRegisterExport',
    summary: 'How far an export has come',
    params,
    answer: 'RegisterExport',
    refuses: NOT_THERE,
  })
  read(@Param('id') id: string, @CurrentPerson() actor: PersonActor) {
    return this.exports.read(id, actor);
  }

  @Get('register-exports/:id/file')
  @MayUse('manager', 'administrator')
  @ApiProduces('application/vnd.openxmlformats-officedocument.spreadsheetml.sheet', 'text/csv')
  @DescribeRoute({
    operationId: 'fetchRegisterExport',
    summary: 'The file of an export that is ready',
    params,
    refuses: { ...NOT_THERE, 409: 'It is not ready yet.' },
    status: 200,
  })
  file(@Param('id') id: string, @CurrentPerson() actor: PersonActor) {
    return this.exports.file(id, actor);
  }
}
