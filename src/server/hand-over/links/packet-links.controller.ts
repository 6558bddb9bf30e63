import { Body, Controller, Delete, Get, Headers, HttpCode, Param, Post, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { CounselLinkDto, PacketLinkDto } from '../../../../shared/wire/packet-link-requests.dto.js';
import { readRecordInput } from '../../../../shared/wire/record-reading.js';
import { CurrentPerson, type PersonActor } from '../../accounts/accounts.api.js';
import { DescribeRoute } from '../../platform/http/describe-route.js';
import { answerCreated } from '../../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../../platform/http/idempotency-key.js';
import { MayUse } from '../../platform/http/may-use.js';
import { readInput } from '../../platform/http/read-input.js';
import { PacketLinks } from './packet-links.service.js';
import { SendLinks } from './send-links.service.js';

const PACKET = {
  id: 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03',
  packet: '7a2f0c9e-51de-4b0b-9a3e-0d6a9d1c2e11',
};
const LINK = { ...PACKET, link: '3f0c9a7e-15de-4bb0-93ae-0d6a9d1c2e44' };
const NOT_THERE = { 404: 'There is no such incident for you, or no such packet or link of it.' };

/** Links by which somebody without an account collects a packet. */
@ApiTags('hand-over')
@Controller('api/incidents/:id/packets/:packet')
export class PacketLinksController {
  constructor(
    private readonly links: PacketLinks,
    private readonly sending: SendLinks,
  ) {}

  @Post('links')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'sendPacketLink',
    summary: 'Mails a link to the packet; the passcode is in this answer alone, to be told by another way',
    description:
      'The mail names the incident by its reference, and the head of its log with its date, and says nothing of what happened.',
    params: PACKET,
    body: 'PacketLinkDraft',
    answer: 'PacketLinkSent',
    status: 201,
    once: true,
    refuses: {
      ...NOT_THERE,
      403: 'It holds notes that a lawyer asked for.',
      409: 'The service does not know its public address.',
    },
  })
  async make(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') incident: string,
    @Param('packet') packet: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    const draft = readInput(readRecordInput(PacketLinkDto, body));
    const made = await this.sending.toAnybody({ incident, packet }, draft, readIdempotencyKey(key), actor);
    return answerCreated(reply, `/api/incidents/${incident}/packets/${packet}/links`, made);
  }

  @Post('counsel-links')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'sendCounselLink',
    summary: 'Mails a link to a packet with notes for counsel; it opens for that lawyer alone, signed in',
    description: 'There is no passcode: whoever sends it can open it no more than the mail can.',
    params: PACKET,
    body: 'CounselLinkDraft',
    answer: 'PacketLink',
    status: 201,
    once: true,
    refuses: {
      ...NOT_THERE,
      409: 'It holds no notes for counsel, or the service does not know its public address.',
    },
  })
  async makeForCounsel(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') incident: string,
    @Param('packet') packet: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    const draft = readInput(readRecordInput(CounselLinkDto, body));
    const made = await this.sending.toCounsel({ incident, packet }, draft, readIdempotencyKey(key), actor);
    return answerCreated(reply, `/api/incidents/${incident}/packets/${packet}/links`, made);
  }

  @Get('links')
  @MayUse('manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'listPacketLinks',
    summary: 'The links to a packet: whether each opens, every look and download, and when it was collected',
    params: PACKET,
    answer: 'PacketLinkList',
    refuses: NOT_THERE,
  })
  list(
    @Param('id') incident: string,
    @Param('packet') packet: string,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.links.list({ incident, packet }, actor);
  }

  @Delete('links/:link')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'revokePacketLink',
    summary: 'Takes a link back: from now on it opens nothing',
    params: LINK,
    answer: 'PacketLink',
    refuses: NOT_THERE,
  })
  revoke(
    @Param('id') incident: string,
    @Param('packet') packet: string,
    @Param('link') link: string,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.links.revoke({ incident, packet, link }, actor);
  }
}
