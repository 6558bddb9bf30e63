import { Body, Controller, Get, Headers, HttpCode, Param, Post, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerVersioned } from '../platform/http/entity-tag.js';
import { MayUse } from '../platform/http/may-use.js';
import { MailDeskService } from './mail-desk.service.js';
import { MAIL_ID } from './mail-schemas.js';

const DECISION = {
  params: { id: MAIL_ID },
  body: 'MailDecision',
  answer: 'Mail',
  versioned: true,
  refuses: { 404: 'There is no such mail.', 409: 'It is not in a state in which that is decided.' },
};

/** Mail as it stands: administrators see what did not go through, and decide about it. */
@ApiTags('mail')
@Controller('api/mail')
export class MailController {
  constructor(private readonly service: MailDeskService) {}

  @Get()
  @MayUse('administrator')
  @DescribeRoute({
    operationId: 'listMail',
    summary: 'Mail and what became of it, the newest first',
    description: 'Look for state=failed and state=uncertain: nothing more happens to those by itself.',
    query: { 'state?': 'uncertain', 'limit?': '25', 'after?': 'WyIyMDI2IiwiYTEiXQ' },
    answer: 'MailPage',
    refuses: { 422: 'The query cannot be used.' },
  })
  list(@Query() query: unknown): Promise<object> {
    return this.service.page(query);
  }

  @Post(':id/resend')
  @HttpCode(200)
  @MayUse('administrator')
  @DescribeRoute({
    operationId: 'resendMail',
    summary: 'Send a mail again that failed, or of which nobody knows whether it arrived',
    ...DECISION,
  })
  async resend(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() person: PersonActor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    return answerVersioned(reply, await this.service.decide('resend', id, body, ifMatch, person));
  }

  @Post(':id/delivered')
  @HttpCode(200)
  @MayUse('administrator')
  @DescribeRoute({
    operationId: 'markMailDelivered',
    summary: 'Say that a mail arrived of which nobody knew',
    ...DECISION,
  })
  async delivered(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() person: PersonActor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    return answerVersioned(reply, await this.service.decide('delivered', id, body, ifMatch, person));
  }
}
