import { Body, Controller, Get, Headers, Param, Post, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor, CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { AS_OF, DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated } from '../platform/http/entity-tag.js';
import { DecisionDesk } from './decision-desk.js';
import { DecisionReader } from './decision-reader.js';
import { INCIDENT, ManagersMay, NO_INCIDENT, NOT_NOW, ReadersMay, StaffMay } from './route-words.js';

/** What was filed, what the operator was told, and whom the business asked about the law. */
@ApiTags('decision')
@Controller('api/incidents/:id')
export class FilingsController {
  constructor(
    private readonly desk: DecisionDesk,
    private readonly reader: DecisionReader,
  ) {}

  @Get('filings')
  @ReadersMay()
  @DescribeRoute({
    operationId: 'listFilings',
    summary: 'Reports and notices that were made, in order',
    ...INCIDENT,
    query: AS_OF,
    answer: 'FilingList',
    refuses: NO_INCIDENT,
  })
  filings(@Param('id') id: string, @Query() query: unknown, @CurrentActor() actor: Actor): Promise<object> {
    return this.reader.items(id, 'filings', query, actor);
  }

  @Post('filings')
  @ManagersMay()
  @DescribeRoute({
    operationId: 'recordFiling',
    summary: 'A report or notice that was made, and the duties that it answers',
    description:
      'One filing may answer several duties: a federal report is made to a state (33 CFR 173.59). ' +
      'One that was recorded wrongly is replaced, never changed.',
    ...INCIDENT,
    body: 'FilingDetails',
    answer: 'Filing',
    status: 201,
    once: true,
    refuses: { ...NO_INCIDENT, ...NOT_NOW },
  })
  async file(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ) {
    return answerCreated(reply, `/api/incidents/${id}/filings`, await this.desk.file(id, body, key, actor));
  }

  @Get('operator-notices')
  @ReadersMay()
  @DescribeRoute({
    operationId: 'listOperatorNotices',
    summary: 'What the operators of the craft were told about their duty, and what they say',
    ...INCIDENT,
    query: AS_OF,
    answer: 'OperatorNoticeList',
    refuses: NO_INCIDENT,
  })
  notices(@Param('id') id: string, @Query() query: unknown, @CurrentActor() actor: Actor): Promise<object> {
    return this.reader.items(id, 'operatorNotices', query, actor);
  }

  @Post('operator-notices')
  @StaffMay()
  @DescribeRoute({
    operationId: 'noteOperator',
    summary: 'That somebody told the operator of the duty to report, or did not, and what the operator says',
    description:
      'The service sends no such notice: a person tells the operator, and never a bereaved family.',
    ...INCIDENT,
    body: 'OperatorNoticeDetails',
    answer: 'OperatorNotice',
    status: 201,
    once: true,
    refuses: NO_INCIDENT,
  })
  async note(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ) {
    const path = `/api/incidents/${id}/operator-notices`;
    return answerCreated(reply, path, await this.desk.noteOperator(id, body, key, actor));
  }

  @Get('legal-calls')
  @ReadersMay()
  @DescribeRoute({
    operationId: 'listLegalCalls',
    summary: 'Calls to agencies and counsel about what the law asks',
    ...INCIDENT,
    query: AS_OF,
    answer: 'LegalCallList',
    refuses: NO_INCIDENT,
  })
  calls(@Param('id') id: string, @Query() query: unknown, @CurrentActor() actor: Actor): Promise<object> {
    return this.reader.items(id, 'legalCalls', query, actor);
  }

  @Post('legal-calls')
  @ManagersMay()
  @DescribeRoute({
    operationId: 'logLegalCall',
    summary: 'Who at the agency or of counsel said what about a duty, and when',
    description:
      'Assume that the other side will read this: write the answer about the duty, and keep the advice of counsel ' +
      'for the privileged notes.',
    ...INCIDENT,
    body: 'LegalCallDetails',
    answer: 'LegalCall',
    status: 201,
    once: true,
    refuses: NO_INCIDENT,
  })
  async logCall(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ) {
    const path = `/api/incidents/${id}/legal-calls`;
    return answerCreated(reply, path, await this.desk.logCall(id, body, key, actor));
  }
}
