import { Body, Controller, Get, Headers, HttpCode, Param, Post, Put, Query, Res } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiQuery, ApiResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { readPageQuery } from '../../../shared/wire/page-query.dto.js';
import { AsOfDto, ListAmendmentsDto, ListIncidentsDto } from '../../../shared/wire/record-queries.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import { OpenIncidentDto, SameEventDto, SetStatusDto } from '../../../shared/wire/record-requests.dto.js';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { pageRequest } from '../platform/http/cursor.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { PROBLEM, WithKey, WithVersion, bodyOf } from './api-words.js';
import { HistoryService } from './history.service.js';
import { IncidentsService } from './incidents.service.js';

@ApiTags('record')
@Controller('api/incidents')
export class IncidentsController {
  constructor(
    private readonly incidents: IncidentsService,
    private readonly history: HistoryService,
  ) {}

  @Post()
  @MayUse('staff', 'manager', 'administrator', 'device')
  @WithKey()
  @ApiOperation({
    operationId: 'openIncident',
    summary: 'Opens an incident from whatever is known',
    description:
      'One word is enough, and so is none. The same Idempotency-Key never makes a second incident.',
  })
  @ApiBody(bodyOf(OpenIncidentDto, { oneTouch: { call: { said: 'help', craftNamed: ['PWC 7'] } } }))
  @ApiResponse({ status: 201, description: 'The incident, its reference and the versions of its sections.' })
  @ApiResponse({ status: 409, description: 'The id is taken.', content: PROBLEM })
  @ApiResponse({ status: 422, description: 'Each fault at its pointer.', content: PROBLEM })
  async open(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ) {
    const input = readInput(readRecordInput(OpenIncidentDto, body));
    return answerCreated(
      reply,
      '/api/incidents',
      await this.incidents.open(input, readIdempotencyKey(key), actor),
    );
  }

  @Get()
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @ApiOperation({
    operationId: 'listIncidents',
    summary: 'Incidents, the latest first, by words and filters',
  })
  @ApiQuery({ name: 'q', required: false, description: 'Words that all are somewhere in the record.' })
  @ApiQuery({ name: 'status', required: false, enum: ['open', 'closed'] })
  @ApiResponse({ status: 200, description: 'A page; `next` is the `after` of the page behind it.' })
  list(@Query() query: unknown, @CurrentActor() actor: Actor) {
    const { limit, after, ...filter } = readInput(readPageQuery(query, ListIncidentsDto), 'query');
    const page = pageRequest({
      ...(limit !== undefined && { limit }),
      ...(after !== undefined && { after }),
    });
    return this.incidents.list(filter, page, actor);
  }

  @Get(':id')
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @ApiOperation({ operationId: 'readIncident', summary: 'One incident and the versions of its sections' })
  async read(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @CurrentActor() actor: Actor,
  ) {
    return answerVersioned(reply, await this.incidents.read(id, actor));
  }

  @Put(':id/status')
  @MayUse('manager', 'administrator')
  @WithVersion()
  @ApiOperation({ operationId: 'setIncidentStatus', summary: 'Closes an incident or opens it again' })
  @ApiBody(bodyOf(SetStatusDto))
  @ApiResponse({ status: 412, description: 'Changed meanwhile: both versions.', content: PROBLEM })
  async setStatus(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentActor() actor: Actor,
  ) {
    const input = readInput(readRecordInput(SetStatusDto, body));
    return answerVersioned(reply, await this.incidents.setStatus(id, input, ifMatch, actor));
  }

  @Post(':id/same-event')
  @HttpCode(200)
  @MayUse('staff', 'manager', 'administrator')
  @ApiOperation({ operationId: 'joinIncidents', summary: 'Says that two incidents are one event; both stay' })
  @ApiBody(bodyOf(SameEventDto))
  async join(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @CurrentActor() actor: Actor,
  ) {
    const input = readInput(readRecordInput(SameEventDto, body));
    return answerVersioned(reply, await this.incidents.join(id, input, actor));
  }

  @Get(':id/record')
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @ApiOperation({ operationId: 'readRecord', summary: 'All sections, now or as of a moment' })
  @ApiQuery({ name: 'at', required: false, description: 'An instant; what was withdrawn since stays away.' })
  async record(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Query() query: unknown,
    @CurrentActor() actor: Actor,
  ) {
    const { at } = readInput(readRecordInput(AsOfDto, query), 'query');
    return answerVersioned(reply, await this.history.record(id, at, actor));
  }

  @Get(':id/amendments')
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @ApiOperation({
    operationId: 'listAmendments',
    summary: 'Who changed what, when and why; the newest first',
  })
  @ApiQuery({ name: 'section', required: false, description: 'Only what changed this section.' })
  @ApiQuery({
    name: 'pointer',
    required: false,
    description: 'Only what changed this field of the section, or a field below it: `/people/p1/outcome`.',
  })
  amendments(@Param('id') id: string, @Query() query: unknown, @CurrentActor() actor: Actor) {
    const { limit, after, section, pointer } = readInput(readPageQuery(query, ListAmendmentsDto), 'query');
    const page = pageRequest({
      ...(limit !== undefined && { limit }),
      ...(after !== undefined && { after }),
    });
    return this.history.list(id, { section, pointer }, page, actor);
  }
}
