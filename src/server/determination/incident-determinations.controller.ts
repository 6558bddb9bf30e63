import { Body, Controller, Get, Headers, Param, Post, Query, Res } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiQuery, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor, CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { MayUse } from '../platform/http/may-use.js';
import { IncidentDeterminations } from './incident-determinations.js';
import { ScopeAnswers } from './scope-answers.js';

const READERS = ['staff', 'manager', 'administrator', 'counsel'] as const;
const ONE = 'With the facts and the texts of the law that it rests on. Not legal advice.';
const STORED = {
  type: 'object',
  properties: {
    version: { type: 'integer', description: 'Its number within the incident; also sent as ETag.' },
    madeAt: { type: 'string', format: 'date-time' },
    facts: { $ref: '#/components/schemas/IncidentFacts' },
    determination: { $ref: '#/components/schemas/Determination' },
  },
} as const;

@ApiTags('determination')
@Controller('api/incidents/:id')
export class IncidentDeterminationsController {
  constructor(
    private readonly determinations: IncidentDeterminations,
    private readonly answers: ScopeAnswers,
  ) {}

  @Get('determination')
  @MayUse(...READERS)
  @ApiOperation({
    operationId: 'determineIncident',
    summary: 'What the law calls for on the record as it stands, or what was determined by a moment',
    description: ONE,
  })
  @ApiQuery({ name: 'at', required: false, description: 'As of which instant; now, without one.' })
  @ApiOkResponse({ description: 'The one that stands.', content: { 'application/json': { schema: STORED } } })
  async current(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Query() query: unknown,
    @CurrentActor() actor: Actor,
  ) {
    return answerVersioned(reply, await this.determinations.current(id, query, actor));
  }

  @Get('determinations')
  @MayUse(...READERS)
  @ApiOperation({
    operationId: 'listDeterminations',
    summary: 'Every determination of an incident, the latest first',
  })
  @ApiQuery({ name: 'limit', required: false, example: 25 })
  @ApiQuery({ name: 'after', required: false, description: 'What the page before gave as next.' })
  list(@Param('id') id: string, @Query() query: unknown, @CurrentActor() actor: Actor) {
    return this.determinations.list(id, query, actor);
  }

  @Get('determinations/:sequence')
  @MayUse(...READERS)
  @ApiOperation({
    operationId: 'readDetermination',
    summary: 'A determination as it was made',
    description: ONE,
  })
  @ApiOkResponse({ description: 'As it was made.', content: { 'application/json': { schema: STORED } } })
  async find(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('sequence') sequence: string,
    @CurrentActor() actor: Actor,
  ) {
    return answerVersioned(reply, await this.determinations.find(id, sequence, actor));
  }

  @Post('scope-answers')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'answerWhetherReportable',
    summary: 'A signed answer to the question whether it is a reportable occurrence at all',
    description:
      'An aid of the determination asks; only this answer, with its reason, takes the accident duties of a jurisdiction ' +
      'away or brings them back. It is determined anew at once. Duties on other matters stay.',
    params: { id: 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03' },
    body: 'ScopeAnswerDetails',
    answer: 'ScopeAnswer',
    status: 201,
    once: true,
    refuses: { 404: 'There is no incident at this address.' },
  })
  async answer(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ) {
    const made = await this.answers.sign(id, body, key, actor);
    return answerCreated(reply, `/api/incidents/${id}/determination`, made);
  }
}
