import { Body, Controller, Get, Headers, HttpCode, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { ReleaseAmountsService } from './release-amounts.service.js';
import { OwnerMay, StaffMay } from './who-may.js';

@ApiTags('fleet')
@Controller('api/release-amounts')
export class ReleaseAmountsController {
  constructor(private readonly amounts: ReleaseAmountsService) {}

  @Get()
  @StaffMay()
  @DescribeRoute({
    operationId: 'listReleaseAmounts',
    summary: "The owner's amounts, the newest first: the first one counts",
    query: { 'limit?': '1', 'after?': 'WyIyIiwiYTEiXQ' },
    answer: 'ReleaseAmountPage',
    refuses: { 422: 'The query cannot be used.' },
  })
  list(@Query() query: unknown): Promise<object> {
    return this.amounts.page(query);
  }

  @Post()
  @HttpCode(201)
  @OwnerMay()
  @DescribeRoute({
    operationId: 'addReleaseAmount',
    summary: 'The amount below which a shift lead releases a craft after damage alone',
    body: 'ReleaseAmountDetails',
    answer: 'ReleaseAmount',
    status: 201,
    once: true,
  })
  add(
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.amounts.add(body, key, actor);
  }
}
