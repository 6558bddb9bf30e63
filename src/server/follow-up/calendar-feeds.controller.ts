import { Controller, Delete, Get, Headers, HttpCode, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { MayUse } from '../platform/http/may-use.js';
import { CalendarFeeds } from './calendar-feeds.service.js';
import { FEED_ID } from './calendar-schemas.js';

/** The secret address of one's own calendar; counsel has no tasks. */
@ApiTags('follow-up')
@Controller('api/calendar-feeds')
export class CalendarFeedsController {
  constructor(private readonly feeds: CalendarFeeds) {}

  @Get()
  @MayUse('staff', 'manager', 'administrator')
  @DescribeRoute({
    operationId: 'listCalendarFeeds',
    summary: 'The calendar that one has, without its address',
    answer: 'CalendarFeedList',
  })
  list(@CurrentPerson() person: PersonActor): Promise<object> {
    return this.feeds.list(person);
  }

  @Post()
  @HttpCode(201)
  @MayUse('staff', 'manager', 'administrator')
  @DescribeRoute({
    operationId: 'renewCalendarFeed',
    summary: 'A new secret address for the calendar of one’s tasks; the one before stops to work',
    description: 'The address is told once. Whoever has it reads reference, task and time, and nothing else.',
    answer: 'NewCalendarFeed',
    status: 201,
    once: true,
  })
  renew(
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() person: PersonActor,
  ): Promise<object> {
    return this.feeds.renew(readIdempotencyKey(key), person);
  }

  @Delete(':id')
  @HttpCode(204)
  @MayUse('staff', 'manager', 'administrator')
  @DescribeRoute({
    operationId: 'revokeCalendarFeed',
    summary: 'Nobody reads the calendar at its address any more',
    params: { id: FEED_ID },
    refuses: { 404: 'There is no such calendar of yours.' },
  })
  revoke(@Param('id') id: string, @CurrentPerson() person: PersonActor): Promise<void> {
    return this.feeds.revoke(id, person);
  }
}
