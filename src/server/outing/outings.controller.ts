import { Body, Controller, Get, Headers, HttpCode, Param, Post, Put, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor, CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { MayUse } from '../platform/http/may-use.js';
import { OutingImports } from './outing-imports.service.js';
import { Outings } from './outings.service.js';
import { WhereCraftAre } from './whereabouts.service.js';

const STAFF = ['staff', 'manager', 'administrator'] as const;
const params = { id: '6f1e1f9a-94f5-4ad0-9f31-0d7d2c8a5b10' };
const AS_IT_STANDS = { 409: 'Not as it stands: the answer says why.' };
const NOT_THERE = { 404: 'There is no such outing.' };

/** Craft that go out and come back. */
@ApiTags('outing')
@Controller('api')
export class OutingsController {
  constructor(
    private readonly outings: Outings,
    private readonly imports: OutingImports,
    private readonly whereabouts: WhereCraftAre,
  ) {}

  @Get('outings')
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'listWhereCraftAre',
    summary: 'What is out, late and in now: every craft of the fleet, the longest overdue first',
    answer: 'CraftWhereabouts',
  })
  list(): Promise<object> {
    return this.whereabouts.list();
  }

  @Post('outings')
  @MayUse(...STAFF, 'device')
  @DescribeRoute({
    operationId: 'writeOuting',
    summary: 'A craft went out; what is left out is not known',
    description: 'A device is answered without names and numbers.',
    body: 'OutingSent',
    answer: 'Outing',
    status: 201,
    once: true,
    refuses: AS_IT_STANDS,
  })
  async add(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return answerCreated(reply, '/api/outings', await this.outings.add(body, key, actor));
  }

  @Post('outing-lists')
  @HttpCode(201)
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'takeOutingList',
    summary: 'Takes over a list of craft due back as CSV, whole or not at all',
    description: 'Every bad row is named with row, field and fix. Times are on the clock of the station.',
    body: 'OutingImport',
    answer: 'OutingImported',
    status: 201,
    once: true,
  })
  take(
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.imports.take(body, key, actor);
  }

  @Get('outings/:id')
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'readOuting',
    summary: 'An outing with everything that happened to it',
    params,
    answer: 'OutingWithEvents',
    refuses: NOT_THERE,
  })
  async read(@Res({ passthrough: true }) reply: FastifyReply, @Param('id') id: string): Promise<object> {
    return answerVersioned(reply, await this.outings.read(id));
  }

  @Put('outings/:id')
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'changeOuting',
    summary:
      'Corrects what was written down, such as a later due time; what it said before stays in its events',
    params,
    body: 'OutingSent',
    answer: 'Outing',
    versioned: true,
    refuses: { ...NOT_THERE, ...AS_IT_STANDS },
  })
  async change(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.outings.change(id, body, ifMatch, actor));
  }

  @Post('outings/units/:unit/back')
  @HttpCode(200)
  @MayUse(...STAFF, 'device')
  @DescribeRoute({
    operationId: 'markBack',
    summary: 'The craft with this unit name is back',
    params: { unit: 'PWC 7' },
    body: 'OutingMark',
    answer: 'Outing',
    once: true,
    refuses: AS_IT_STANDS,
  })
  back(
    @Param('unit') unit: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.outings.back(unit, body, key, actor);
  }

  @Post('outings/:id/undoing')
  @HttpCode(200)
  @MayUse(...STAFF, 'device')
  @DescribeRoute({
    operationId: 'undoBack',
    summary: 'It was marked back by mistake and is out as before; that it was stays in its events',
    params,
    body: 'OutingUndoing',
    answer: 'Outing',
    once: true,
    refuses: { ...NOT_THERE, ...AS_IT_STANDS },
  })
  undo(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.outings.undoBack(id, body, key, actor);
  }
}
