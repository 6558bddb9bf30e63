import { Controller, Get, Header, Param } from '@nestjs/common';
import { ApiExcludeController } from '@nestjs/swagger';
import { MayUse } from '../platform/http/may-use.js';
import { CalendarFeeds } from './calendar-feeds.service.js';

/** What calendar programs read; no part of the API. */
@ApiExcludeController()
@Controller('calendar')
export class CalendarController {
  constructor(private readonly feeds: CalendarFeeds) {}

  @Get(':file')
  @MayUse('anyone')
  @Header('content-type', 'text/calendar; charset=utf-8')
  @Header('cache-control', 'private, no-cache')
  @Header('x-robots-tag', 'noindex')
  read(@Param('file') file: string): Promise<string> {
    return this.feeds.read(file);
  }
}
