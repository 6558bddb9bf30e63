import { Body, Controller, Get, Headers, HttpCode, Param, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor, CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { MayUse } from '../platform/http/may-use.js';
import { ClosingCounts } from './closing-counts.service.js';

const STAFF = ['staff', 'manager', 'administrator'] as const;
const params = { id: '6f1e1f9a-94f5-4ad0-9f31-0d7d2c8a5b10' };
const NOT_THERE = { 404: 'There is no such count.' };

/** The count at closing. */
@ApiTags('outing')
@Controller('api/closing-counts')
export class ClosingCountsController {
  constructor(private readonly counts: ClosingCounts) {}

  @Get()
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'listClosingCounts',
    summary: 'The latest counts, the newest first',
    answer: 'ClosingCountList',
  })
  list(): Promise<object> {
    return this.counts.latest();
  }

  @Post()
  @MayUse(...STAFF, 'device')
  @DescribeRoute({
    operationId: 'openClosingCount',
    summary: 'Begins the count of a station, or of the whole fleet',
    body: 'ClosingCountSent',
    answer: 'ClosingCount',
    status: 201,
    once: true,
    refuses: { 409: 'One of this day is open.' },
  })
  async open(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return answerCreated(reply, '/api/closing-counts', await this.counts.open(body, key, actor));
  }

  @Get(':id')
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'readClosingCount',
    summary: 'A count with every answer, and the craft that nobody has answered for',
    params,
    answer: 'ClosingCount',
    refuses: NOT_THERE,
  })
  async read(@Res({ passthrough: true }) reply: FastifyReply, @Param('id') id: string): Promise<object> {
    return answerVersioned(reply, await this.counts.read(id));
  }

  @Post(':id/answers')
  @HttpCode(200)
  @MayUse(...STAFF, 'device')
  @DescribeRoute({
    operationId: 'answerClosingCount',
    summary: 'In, out, or known to be elsewhere; a later answer for the same craft counts',
    params,
    body: 'CountAnswer',
    answer: 'ClosingCount',
    once: true,
    refuses: { ...NOT_THERE, 409: 'The count is closed.' },
  })
  answer(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.counts.answer(id, body, key, actor);
  }

  @Post(':id/closing')
  @HttpCode(200)
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'closeClosingCount',
    summary: 'Signs the count: craft counted in are marked back, craft counted out are "not back"',
    params,
    answer: 'ClosingCount',
    versioned: true,
    refuses: { ...NOT_THERE, 409: 'Craft are unanswered: each is named.' },
  })
  async close(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.counts.close(id, ifMatch, actor));
  }
}
