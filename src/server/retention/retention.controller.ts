import { Body, Controller, Get, Headers, Param, Post, Put, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { MayUse } from '../platform/http/may-use.js';
import { RetentionChoices } from './retention-choices.service.js';
import { RetentionDecisions } from './retention-decisions.service.js';
import { RetentionList } from './retention-list.service.js';

const PAGE = { 'limit?': '25', 'after?': 'WyIwIDIwMjYtMDEtMDEiLCJtZWRpY2FsIl0' };

/** How long what is kept, what is due for deletion, and what people decided about it. */
@ApiTags('retention')
@Controller('api/retention')
export class RetentionController {
  constructor(
    private readonly list: RetentionList,
    private readonly decisions: RetentionDecisions,
    private readonly choices: RetentionChoices,
  ) {}

  @Get()
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'listRetention',
    summary: 'What is due for deletion, stopped, soon due, or cannot be told for want of a fact',
    description: 'The longest period that applies or may apply counts. Nothing is ever deleted by itself.',
    query: { 'state?': 'due', ...PAGE },
    answer: 'RetentionPage',
    refuses: { 422: 'The query cannot be used.' },
  })
  page(@Query() query: unknown) {
    return this.list.page(query);
  }

  @Get('kinds')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'listRetentionKinds',
    summary: 'Every kind of what is kept: how long, why, by which source, what goes with it and what stays',
    answer: 'RetentionKinds',
  })
  kinds() {
    return this.choices.kinds();
  }

  @Put('periods/:period')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'lengthenRetention',
    summary: 'Lengthens a time that the business itself chose; that of a law is not for it to change',
    params: { period: 'record-choice' },
    body: 'RetentionPeriodSent',
    answer: 'RetentionKinds',
    versioned: true,
    refuses: { 404: 'There is no such period.', 409: 'A law sets it.' },
  })
  lengthen(
    @Param('period') period: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ) {
    return this.choices.lengthen(period, body, ifMatch, actor);
  }

  @Get('decisions')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'listRetentionDecisions',
    summary: 'What was deleted or kept longer, by whom and why, the latest first',
    query: PAGE,
    answer: 'RetentionDecisionPage',
    refuses: { 422: 'The query cannot be used.' },
  })
  decided(@Query() query: unknown) {
    return this.decisions.page(query);
  }

  @Post('decisions')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'decideRetention',
    summary: 'Deletes one line of the list for good, or keeps it until a day',
    description:
      'If-Match names the version of the line as it was seen. Content goes out of the record, its history, files and ' +
      'packets; commitments stay, so that the log still proves itself. Copies made before hold what they held.',
    body: 'RetentionDecisionSent',
    answer: 'RetentionDecision',
    status: 201,
    once: true,
    versioned: true,
    refuses: { 409: 'A hold, an open request, a task or a report stops it, or its time is not surely over.' },
  })
  decide(
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ) {
    return this.decisions.decide(body, { ifMatch, key }, actor);
  }
}
