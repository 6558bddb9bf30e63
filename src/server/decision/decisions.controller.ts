import { Body, Controller, Get, Headers, Param, Post, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor, CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { AS_OF, DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated } from '../platform/http/entity-tag.js';
import { DecisionDesk } from './decision-desk.js';
import { DecisionReader } from './decision-reader.js';
import { INCIDENT, ManagersMay, NO_INCIDENT, NOT_NOW, ReadersMay } from './route-words.js';

const CAUTION =
  'Not legal advice: confirm with the state agency and counsel before deciding that nothing is due.';

/** The duties of an incident, and what is signed on them. */
@ApiTags('decision')
@Controller('api/incidents/:id')
export class DecisionsController {
  constructor(
    private readonly desk: DecisionDesk,
    private readonly reader: DecisionReader,
  ) {}

  @Get('duties')
  @ReadersMay()
  @DescribeRoute({
    operationId: 'listDuties',
    summary: 'The duties of an incident as they stand: state, clock, what reopened, and what is proposed',
    description: CAUTION,
    ...INCIDENT,
    answer: 'DutyList',
    refuses: NO_INCIDENT,
  })
  duties(@Param('id') id: string, @CurrentActor() actor: Actor): Promise<object> {
    return this.reader.duties(id, actor);
  }

  @Get('decisions')
  @ReadersMay()
  @DescribeRoute({
    operationId: 'listDecisions',
    summary: 'Everything that was signed, and what reopened it, in order',
    ...INCIDENT,
    query: AS_OF,
    answer: 'DecisionList',
    refuses: NO_INCIDENT,
  })
  decisions(@Param('id') id: string, @Query() query: unknown, @CurrentActor() actor: Actor): Promise<object> {
    return this.reader.signed(id, query, actor);
  }

  @Post('decisions')
  @ManagersMay()
  @DescribeRoute({
    operationId: 'signDecision',
    summary: 'Signs on one report: report, wait, or no report due on the facts as of now',
    description: `${CAUTION} A decision is never changed: a later one takes its place.`,
    ...INCIDENT,
    body: 'DecisionDetails',
    answer: 'Decision',
    status: 201,
    once: true,
    refuses: { ...NO_INCIDENT, ...NOT_NOW },
  })
  async sign(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ) {
    return answerCreated(reply, `/api/incidents/${id}/decisions`, await this.desk.sign(id, body, key, actor));
  }
}
