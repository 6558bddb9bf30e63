import { Body, Controller, Get, Headers, HttpCode, Param, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor, CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { MayUse } from '../platform/http/may-use.js';
import { RequestAnswers } from './request-answers.js';
import { RequestsService } from './requests.service.js';
import { ServedPapers } from './served-papers.js';

const REQUEST = { id: '4f0d6a1e-7b92-4c35-8e1f-2d3c4b5a6978' };
const NO_REQUEST = { 404: 'There is no such request for you.' };

/** What is added to requests: what was produced, what was objected, and that a paper came at all. */
@ApiTags('requests')
@Controller('api')
export class RequestAnswersController {
  constructor(
    private readonly answers: RequestAnswers,
    private readonly requests: RequestsService,
    private readonly papers: ServedPapers,
  ) {}

  @Post('requests/:id/productions')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'recordProduction',
    summary: 'What was produced: to whom, when, how, and which packet with its head',
    description: 'One that was recorded wrongly is replaced, never changed.',
    params: REQUEST,
    body: 'LegalRequestProduction',
    answer: 'LegalRequest',
    once: true,
    refuses: NO_REQUEST,
  })
  async produce(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.answers.produce(id, body, key, actor));
  }

  @Post('requests/:id/objections')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'recordObjection',
    summary: 'That objections were made, to whom, when and how',
    description:
      'Assume that the other side will read this: the advice of counsel belongs among the privileged notes.',
    params: REQUEST,
    body: 'LegalRequestObjection',
    answer: 'LegalRequest',
    once: true,
    refuses: NO_REQUEST,
  })
  async object(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.answers.object(id, body, key, actor));
  }

  @Get('incidents/:id/requests')
  @MayUse('manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'listRequestsOfIncident',
    summary: 'The requests that are thought to concern an incident, open and closed',
    params: { id: 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03' },
    answer: 'LegalRequestList',
    refuses: { 404: 'There is no such incident for you.' },
  })
  ofIncident(@Param('id') id: string, @CurrentPerson() actor: PersonActor): Promise<object> {
    return this.requests.ofIncident(id, actor);
  }

  @Post('served-papers')
  @MayUse('staff', 'manager', 'administrator', 'device')
  @DescribeRoute({
    operationId: 'takeServedPaper',
    summary: 'That somebody brought a paper, or one came by mail: from whom, when and how',
    description:
      'Whoever took it need not have read it, and is shown no more than its number. A manager reads it and enters ' +
      'the rest; until then neither its kind nor its due time is known, and nothing is deleted.',
    body: 'ServedPaperDraft',
    answer: 'ServedPaper',
    status: 201,
    once: true,
  })
  async take(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return answerCreated(reply, '/api/requests', await this.papers.take(body, key, actor));
  }
}
