import { Body, Controller, Get, Headers, Param, Post, Put, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { AS_OF, DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { INCIDENT_ID, ITEM_ID } from './evidence-examples.js';
import { OutsideService } from './outside.service.js';
import { ReadersMay, StaffMay } from './who-may.js';

const params = { id: INCIDENT_ID };

/** Evidence that others hold and may soon lose. */
@ApiTags('evidence')
@Controller('api/incidents/:id/outside-evidence')
export class OutsideController {
  constructor(private readonly outside: OutsideService) {}

  @Get()
  @ReadersMay()
  @DescribeRoute({
    operationId: 'listOutsideEvidence',
    summary: 'What others hold, the soonest overwritten first, each with what is to be done',
    params,
    query: AS_OF,
    answer: 'OutsideEvidenceItems',
    refuses: { 404: 'There is no such incident.' },
  })
  list(@Param('id') id: string, @Query() query: unknown, @CurrentActor() actor: Actor): Promise<object> {
    return this.outside.list(id, query, actor);
  }

  @Post()
  @StaffMay()
  @DescribeRoute({
    operationId: 'addOutsideEvidence',
    summary: 'Somebody else holds evidence: who, and until when it is kept',
    params,
    body: 'OutsideEvidenceDetails',
    answer: 'OutsideEvidence',
    status: 201,
    once: true,
    refuses: { 404: 'There is no such incident.' },
  })
  async add(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const made = await this.outside.add(id, body, key, actor);
    return answerCreated(reply, `/api/incidents/${id}/outside-evidence`, made);
  }

  @Put(':item')
  @StaffMay()
  @DescribeRoute({
    operationId: 'replaceOutsideEvidence',
    summary: 'When it was asked for, what the answer was, what became of it',
    params: { ...params, item: ITEM_ID },
    body: 'OutsideEvidenceDetails',
    answer: 'OutsideEvidence',
    versioned: true,
    refuses: { 404: 'There is no such incident or entry.' },
  })
  async replace(
    @Param('id') id: string,
    @Param('item') item: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    return answerVersioned(reply, await this.outside.replace(id, item, body, ifMatch, actor));
  }
}
