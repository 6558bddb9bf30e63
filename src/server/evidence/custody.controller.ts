import { Body, Controller, Get, Headers, Param, Post, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { AS_OF, DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated } from '../platform/http/entity-tag.js';
import { CustodyService } from './custody.service.js';
import { INCIDENT_ID, ITEM_ID } from './evidence-examples.js';
import { ReadersMay, StaffMay } from './who-may.js';

const params = { id: INCIDENT_ID };

/** Things kept as evidence, and the log of who had them. */
@ApiTags('evidence')
@Controller('api/incidents/:id/custody')
export class CustodyController {
  constructor(private readonly custody: CustodyService) {}

  @Get()
  @ReadersMay()
  @DescribeRoute({
    operationId: 'listCustody',
    summary: 'Things kept as evidence, each with the gaps in its log',
    params,
    query: AS_OF,
    answer: 'CustodyItems',
    refuses: { 404: 'There is no such incident.' },
  })
  list(@Param('id') id: string, @Query() query: unknown, @CurrentActor() actor: Actor): Promise<object> {
    return this.custody.list(id, query, actor);
  }

  @Post()
  @StaffMay()
  @DescribeRoute({
    operationId: 'addCustodyItem',
    summary: 'A thing kept as evidence: found where and by whom, kept where',
    params,
    body: 'CustodyItemDetails',
    answer: 'CustodyItem',
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
    return answerCreated(reply, `/api/incidents/${id}/custody`, await this.custody.add(id, body, key, actor));
  }

  @Post(':item/hand-overs')
  @StaffMay()
  @DescribeRoute({
    operationId: 'addHandOver',
    summary: 'A thing changed hands; entries are added and never changed',
    params: { ...params, item: ITEM_ID },
    body: 'HandOverDetails',
    answer: 'CustodyItem',
    status: 201,
    once: true,
    refuses: { 404: 'There is no such incident or thing.' },
  })
  handOver(
    @Param('id') id: string,
    @Param('item') item: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.custody.handOver(id, item, body, key, actor);
  }
}
