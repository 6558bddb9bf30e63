import { Body, Controller, Get, Headers, HttpCode, Param, Post, Query } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiQuery, ApiResponse, ApiTags } from '@nestjs/swagger';
import {
  AcknowledgeHoldDto,
  NameCustodianDto,
  ReleaseHoldDto,
  StartHoldDto,
} from '../../../shared/wire/record-holds.dto.js';
import { AsOfDto } from '../../../shared/wire/record-queries.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { answerOf, bodyOf, PROBLEM, WithKey } from './api-words.js';
import { HOLDS } from './holds-answers.js';
import { HoldsService } from './holds.service.js';

@ApiTags('record')
@Controller('api/incidents/:id/holds')
export class HoldsController {
  constructor(private readonly holds: HoldsService) {}

  @Get()
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @ApiOperation({
    operationId: 'listHolds',
    summary: 'Whether everything has to be kept, since when and why, and who has acknowledged it',
  })
  @ApiQuery({ name: 'at', required: false, description: 'As of which instant; now, without one.' })
  @ApiResponse(answerOf(HOLDS))
  list(@Param('id') id: string, @Query() query: unknown, @CurrentActor() actor: Actor) {
    const { at } = readInput(readRecordInput(AsOfDto, query), 'query');
    return this.holds.list(id, actor, at);
  }

  @Post()
  @MayUse('manager', 'administrator')
  @WithKey()
  @ApiOperation({
    operationId: 'startHold',
    summary: 'Starts a hold by hand',
    description:
      'After death, a person missing, treatment beyond first aid and a claim one starts by itself.',
  })
  @ApiBody(bodyOf(StartHoldDto, { press: { reason: 'A reporter asked for the video.' } }))
  @ApiResponse(answerOf(HOLDS, 201))
  start(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ) {
    const input = readInput(readRecordInput(StartHoldDto, body));
    return this.holds.start(id, input, readIdempotencyKey(key), actor);
  }

  @Post(':hold/custodians')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @ApiOperation({
    operationId: 'nameCustodian',
    summary: 'Names somebody who must keep what they have; managers are named by themselves',
  })
  @ApiBody(
    bodyOf(NameCustodianDto, {
      account: { account: '5f0c7a3e-2b1d-4c59-9d0e-2f4f6a1c7b10' },
      seasonal: { name: 'Sam Dock' },
    }),
  )
  @ApiResponse(answerOf(HOLDS))
  nameCustodian(
    @Param('id') id: string,
    @Param('hold') hold: string,
    @Body() body: unknown,
    @CurrentActor() actor: Actor,
  ) {
    return this.holds.nameCustodian(id, hold, readInput(readRecordInput(NameCustodianDto, body)), actor);
  }

  @Post(':hold/acknowledgements')
  @HttpCode(200)
  @MayUse('staff', 'manager', 'administrator')
  @ApiOperation({
    operationId: 'acknowledgeHold',
    summary: 'Says that one keeps everything; a manager for somebody without an account',
  })
  @ApiBody(bodyOf(AcknowledgeHoldDto, { own: {}, onPaper: { custodian: 'c1' } }))
  @ApiResponse(answerOf(HOLDS))
  @ApiResponse({ status: 422, description: 'This is no custodian of the hold.', content: PROBLEM })
  acknowledge(
    @Param('id') id: string,
    @Param('hold') hold: string,
    @Body() body: unknown,
    @CurrentActor() actor: Actor,
  ) {
    return this.holds.acknowledge(id, hold, readInput(readRecordInput(AcknowledgeHoldDto, body)), actor);
  }

  @Post(':hold/release')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @ApiOperation({
    operationId: 'releaseHold',
    summary: 'Enters that counsel released the hold; nothing else ends it',
  })
  @ApiBody(
    bodyOf(ReleaseHoldDto, {
      settled: { counsel: 'Cleo Law', releasedOn: '2027-03-01', reason: 'Settled and paid.' },
    }),
  )
  @ApiResponse(answerOf(HOLDS))
  @ApiResponse({ status: 409, description: 'It was released already.', content: PROBLEM })
  release(
    @Param('id') id: string,
    @Param('hold') hold: string,
    @Body() body: unknown,
    @CurrentActor() actor: Actor,
  ) {
    return this.holds.release(id, hold, readInput(readRecordInput(ReleaseHoldDto, body)), actor);
  }
}
