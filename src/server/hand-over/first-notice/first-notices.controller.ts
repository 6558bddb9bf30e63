import { Body, Controller, Get, Headers, HttpCode, Param, Post, Res, StreamableFile } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { ClaimDto, FirstNoticeDto } from '../../../../shared/wire/first-notice-requests.dto.js';
import { readRecordInput } from '../../../../shared/wire/record-reading.js';
import { CurrentPerson, type PersonActor } from '../../accounts/accounts.api.js';
import { DescribeRoute } from '../../platform/http/describe-route.js';
import { answerCreated } from '../../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../../platform/http/idempotency-key.js';
import { MayUse } from '../../platform/http/may-use.js';
import { readInput } from '../../platform/http/read-input.js';
import { FirstNoticesService } from './first-notices.service.js';

const INCIDENT = { id: 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03' };
const NOTICE = { ...INCIDENT, notice: '7a2f0c9e-51de-4b0b-9a3e-0d6a9d1c2e11' };
const NO_INCIDENT = { 404: 'There is no such incident for you.' };

/** The page that an insurer gets the same day, one for each policy, and what the insurer answers. */
@ApiTags('hand-over')
@Controller('api/incidents/:id')
export class FirstNoticesController {
  constructor(private readonly notices: FirstNoticesService) {}

  @Get('first-notices')
  @MayUse('manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'listFirstNotices',
    summary: 'The policies that held for our craft on the day, the notices that were made, and the claims',
    params: INCIDENT,
    answer: 'FirstNotices',
    refuses: NO_INCIDENT,
  })
  list(@Param('id') id: string, @CurrentPerson() actor: PersonActor): Promise<object> {
    return this.notices.list(id, actor);
  }

  @Post('first-notices')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'makeFirstNotice',
    summary: 'Makes the page for one policy from what an insurer may see, and keeps it as it is',
    params: INCIDENT,
    body: 'FirstNoticeDraft',
    answer: 'FirstNotice',
    status: 201,
    once: true,
    refuses: NO_INCIDENT,
  })
  async make(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    const draft = readInput(readRecordInput(FirstNoticeDto, body));
    const made = await this.notices.make(id, draft, readIdempotencyKey(key), actor);
    return answerCreated(reply, `/api/incidents/${id}/first-notices`, made);
  }

  @Get('first-notices/:notice/paper')
  @MayUse('manager', 'administrator', 'counsel')
  @ApiProduces('application/pdf')
  @DescribeRoute({
    operationId: 'downloadFirstNotice',
    summary: 'The page as it was made, as PDF',
    params: NOTICE,
    status: 200,
    refuses: {
      404: 'There is no such incident for you, or no such notice of it.',
      409: 'The paper is no longer there.',
    },
  })
  async paper(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('notice') notice: string,
    @CurrentPerson() actor: PersonActor,
  ): Promise<StreamableFile> {
    const { name, content } = await this.notices.paper(id, notice, actor);
    void reply.header('cache-control', 'no-store');
    return new StreamableFile(content, {
      type: 'application/pdf',
      disposition: `attachment; filename="${name}"`,
    });
  }

  @Post('claims')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'noteClaim',
    summary:
      'The number of the claim and the adjuster, as the insurer told them; the latest of a policy stands',
    params: INCIDENT,
    body: 'ClaimDraft',
    answer: 'FirstNotices',
    refuses: NO_INCIDENT,
  })
  claim(
    @Param('id') id: string,
    @Body() body: unknown,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.notices.claim(id, readInput(readRecordInput(ClaimDto, body)), actor);
  }
}
