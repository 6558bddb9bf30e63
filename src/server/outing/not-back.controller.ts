import { Body, Controller, Get, Headers, HttpCode, Param, Post, Put, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor, CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { MayUse } from '../platform/http/may-use.js';
import { NotBackIncidents } from './not-back-incident.service.js';
import { NotBackReader } from './not-back-reader.js';
import { NotBacks } from './not-back.service.js';

const STAFF = ['staff', 'manager', 'administrator'] as const;
const params = { id: '6f1e1f9a-94f5-4ad0-9f31-0d7d2c8a5b10' };
const NOT_THERE = { 404: 'There is no craft "not back" at this address.' };
const AS_IT_STANDS = { ...NOT_THERE, 409: 'Not as it stands: the answer says why.' };

/** Craft that are not back: search sheet, ladder, and how it ended, which is always somebody's word. */
@ApiTags('outing')
@Controller('api')
export class NotBackController {
  constructor(
    private readonly notBacks: NotBacks,
    private readonly reader: NotBackReader,
    private readonly incidents: NotBackIncidents,
  ) {}

  @Get('not-back')
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'listNotBack',
    summary: 'Craft that are looked for, and endings that wait for a word whether they are an incident',
    answer: 'NotBackList',
  })
  list(): Promise<object> {
    return this.reader.open();
  }

  @Get('incidents/:id/not-back')
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'listNotBackOfIncident',
    summary: 'The craft not back that became this incident',
    params,
    answer: 'NotBackList',
  })
  ofIncident(@Param('id') id: string): Promise<object> {
    return this.reader.ofIncident(id);
  }

  @Post('not-back')
  @MayUse(...STAFF, 'device')
  @DescribeRoute({
    operationId: 'openNotBack',
    summary: 'A craft is late, or out and nobody knows since when: begins the search sheet and the ladder',
    description: 'A device is answered without names and numbers.',
    body: 'NotBackSent',
    answer: 'NotBack',
    status: 201,
    once: true,
    refuses: AS_IT_STANDS,
  })
  async open(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return answerCreated(reply, '/api/not-back', await this.notBacks.open(body, key, actor));
  }

  @Get('not-back/:id')
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'readNotBack',
    summary: 'Search sheet and ladder on the clock of the station, with everything that happened',
    params,
    answer: 'NotBackWithEvents',
    refuses: NOT_THERE,
  })
  async read(@Res({ passthrough: true }) reply: FastifyReply, @Param('id') id: string): Promise<object> {
    return answerVersioned(reply, await this.reader.read(id));
  }

  @Put('not-back/:id/sheet')
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'keepSearchSheet',
    summary: 'Last seen, fuel, where they meant to go; what is left out is not known',
    params,
    body: 'SearchSheet',
    answer: 'NotBack',
    versioned: true,
    refuses: NOT_THERE,
  })
  async keepSheet(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.notBacks.keepSheet(id, body, ifMatch, actor));
  }

  @Post('not-back/:id/stamps')
  @HttpCode(200)
  @MayUse(...STAFF, 'device')
  @DescribeRoute({
    operationId: 'stampRung',
    summary: 'A rung of the ladder was climbed at this time',
    params,
    body: 'RungStamp',
    answer: 'NotBack',
    once: true,
    refuses: NOT_THERE,
  })
  stamp(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.notBacks.stamp(id, body, key, actor);
  }

  @Post('not-back/:id/stamps/:stamp/undoing')
  @HttpCode(200)
  @MayUse(...STAFF, 'device')
  @DescribeRoute({
    operationId: 'undoRung',
    summary: 'A time was stamped by mistake; that it was stays in the events',
    params: { ...params, stamp: params.id },
    body: 'OutingUndoing',
    answer: 'NotBack',
    once: true,
    refuses: NOT_THERE,
  })
  undoStamp(
    @Param() at: Record<'id' | 'stamp', string>,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.notBacks.undoStamp(at, body, key, actor);
  }

  @Post('not-back/:id/ending')
  @HttpCode(200)
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'endNotBack',
    summary:
      'How it turned out; aground, stolen and found empty then propose an incident until somebody answers',
    params,
    body: 'NotBackEnd',
    answer: 'NotBack',
    once: true,
    refuses: AS_IT_STANDS,
  })
  end(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.notBacks.end(id, body, key, actor);
  }

  @Post('not-back/:id/ending/undoing')
  @HttpCode(200)
  @MayUse(...STAFF)
  @DescribeRoute({
    operationId: 'undoNotBackEnd',
    summary: 'It has not ended after all; a craft that was marked back stays so until that is undone too',
    params,
    body: 'OutingUndoing',
    answer: 'NotBack',
    once: true,
    refuses: AS_IT_STANDS,
  })
  undoEnd(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.notBacks.undoEnd(id, body, key, actor);
  }

  @Post('not-back/:id/not-incident')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'sayNotIncident',
    summary: 'A manager says that an ending which proposes an incident is none, and why',
    params,
    body: 'NotIncident',
    answer: 'NotBack',
    once: true,
    refuses: AS_IT_STANDS,
  })
  notIncident(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.notBacks.notIncident(id, body, key, actor);
  }

  @Post('not-back/:id/incident')
  @HttpCode(200)
  @MayUse(...STAFF, 'device')
  @DescribeRoute({
    operationId: 'makeIncidentOfNotBack',
    summary: 'Opens the incident with all that is known; one at most, whoever asks and however often',
    params,
    answer: 'NotBack',
    once: true,
    refuses: NOT_THERE,
  })
  become(
    @Param('id') id: string,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.incidents.become(id, key, actor);
  }
}
