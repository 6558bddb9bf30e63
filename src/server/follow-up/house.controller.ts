import { Body, Controller, Get, Headers, HttpCode, Param, Post, Put, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { MayUse, OwnAccount } from '../platform/http/may-use.js';
import { TASK_ID } from './follow-up-examples.js';
import { HandOvers } from './hand-overs.service.js';
import { HouseRules } from './house-rules.service.js';
import { NoticeAddresses } from './notice-addresses.service.js';

const WORKERS = ['staff', 'manager', 'administrator'] as const;
const params = { id: TASK_ID };
const NOT_THERE = { 404: 'There is no such hand-over.' };

/** What the house keeps for itself: hand-overs of shifts, its own rules, and where its people are told. */
@ApiTags('follow-up')
@Controller('api')
export class HouseController {
  constructor(
    private readonly handOvers: HandOvers,
    private readonly rules: HouseRules,
    private readonly addresses: NoticeAddresses,
  ) {}

  @Get('shift-hand-overs')
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'listShiftHandOvers',
    summary: 'Hand-overs from shift to shift, the newest first',
    query: { 'limit?': '25', 'after?': 'WyIyMDI2IiwiYTEiXQ' },
    answer: 'ShiftHandOverPage',
    refuses: { 422: 'The query cannot be used.' },
  })
  listHandOvers(@Query() query: unknown): Promise<object> {
    return this.handOvers.page(query);
  }

  @Post('shift-hand-overs')
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'buildShiftHandOver',
    summary:
      'Gathers open calls, craft held, promises and what is due, as it stands now, to be signed by both',
    body: 'ShiftHandOverDetails',
    answer: 'ShiftHandOver',
    status: 201,
    once: true,
  })
  async buildHandOver(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerCreated(reply, '/api/shift-hand-overs', await this.handOvers.build(body, key, actor));
  }

  @Get('shift-hand-overs/:id')
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'readShiftHandOver',
    summary: 'A hand-over as it was built and signed',
    params,
    answer: 'ShiftHandOver',
    refuses: NOT_THERE,
  })
  async readHandOver(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
  ): Promise<object> {
    return answerVersioned(reply, await this.handOvers.find(id));
  }

  @Post('shift-hand-overs/:id/signatures')
  @HttpCode(200)
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'signShiftHandOver',
    summary: 'The outgoing shift signs first, then somebody else for the incoming one',
    params,
    body: 'ShiftSignature',
    answer: 'ShiftHandOver',
    versioned: true,
    refuses: { ...NOT_THERE, 409: 'Not as it stands: the answer says why.' },
  })
  async signHandOver(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.handOvers.sign(id, body, ifMatch, actor));
  }

  @Get('house-rules')
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'readHouseRules',
    summary: 'What is often written, common practice without a source, and what the owner adopted',
    answer: 'HouseRulesStanding',
  })
  readRules(): Promise<object> {
    return this.rules.read();
  }

  @Post('house-rules')
  @HttpCode(201)
  @MayUse('administrator')
  @DescribeRoute({
    operationId: 'adoptHouseRules',
    summary: 'The owner adopts dated written rules; an empty list takes those before out of force',
    body: 'HouseRulesDetails',
    answer: 'AdoptedHouseRules',
    status: 201,
    once: true,
  })
  adoptRules(
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.rules.adopt(body, key, actor);
  }

  @Get('notice-address')
  @OwnAccount()
  @DescribeRoute({
    operationId: 'readNoticeAddress',
    summary: 'Where you are told of your tasks',
    answer: 'NoticeAddress',
  })
  readAddress(@CurrentPerson() actor: PersonActor): Promise<object> {
    return this.addresses.of(actor.accountId);
  }

  @Put('notice-address')
  @OwnAccount()
  @DescribeRoute({
    operationId: 'keepNoticeAddress',
    summary: 'Says where you are told of your tasks; what is left out is taken away',
    body: 'NoticeAddressDetails',
    answer: 'NoticeAddress',
  })
  keepAddress(@Body() body: unknown, @CurrentPerson() actor: PersonActor): Promise<object> {
    return this.addresses.keep(body, actor);
  }
}
