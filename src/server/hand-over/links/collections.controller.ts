import { Body, Controller, Get, HttpCode, Param, Post, Req, Res, type StreamableFile } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { CollectionDto, PERMIT_MS } from '../../../../shared/wire/packet-link-requests.dto.js';
import { readRecordInput } from '../../../../shared/wire/record-reading.js';
import { readCookie, writeCookie } from '../../accounts/accounts.api.js';
import { DescribeRoute } from '../../platform/http/describe-route.js';
import { MayUse } from '../../platform/http/may-use.js';
import { readInput } from '../../platform/http/read-input.js';
import { Collections } from './collections.service.js';
import { type Collection, LinkPackets, type LinkStanding } from './link-packets.js';
import { closeToOthers, sendArchive } from './send-archive.js';

const params = { token: 'q3vX0lJ4b8mS6t1yZ9wK2nR5cD7fG0hA3eB6uL8iPoM' };
const NOTHING = { 404: 'Nothing opens here: the link was cut off, has expired or was taken back.' };
const REFUSES = { ...NOTHING, 403: 'The passcode is not right, or the link is locked.' };

/** For somebody who was sent a link and told a passcode, and has no account. */
@ApiTags('hand-over')
@Controller('api/collections/:token')
export class CollectionsController {
  constructor(
    private readonly collections: Collections,
    private readonly packets: LinkPackets,
  ) {}

  @Get()
  @MayUse('anyone')
  @DescribeRoute({
    operationId: 'readLinkStanding',
    summary: 'Whether a link opens, until when, and by what; nothing of the packet, and no look of it',
    params,
    answer: 'LinkStanding',
    refuses: { 404: 'There is no such link.' },
  })
  async standing(
    @Param('token') token: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<LinkStanding> {
    closeToOthers(reply);
    return this.packets.standing(token);
  }

  @Post()
  @HttpCode(200)
  @MayUse('anyone')
  @DescribeRoute({
    operationId: 'lookAtCollection',
    summary: 'What waits here, from whom, why and until when, for whoever gives the passcode',
    description:
      'The look is written into the log of the record. A cookie lets the archive be downloaded for half an hour.',
    params,
    body: 'CollectionPasscode',
    answer: 'Collection',
    refuses: REFUSES,
  })
  async look(
    @Param('token') token: string,
    @Body() body: unknown,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Collection> {
    const { passcode } = readInput(readRecordInput(CollectionDto, body));
    const { collection, permit } = await this.collections.look(token, passcode);
    writeCookie(reply, 'desk_collection', permit, PERMIT_MS);
    closeToOthers(reply);
    return collection;
  }

  @Get('archive')
  @MayUse('anyone')
  @ApiProduces('application/zip')
  @DescribeRoute({
    operationId: 'collectPacket',
    summary:
      'The packet as one archive; beginning and end of the download are written into the log of the record',
    params,
    status: 200,
    refuses: { ...REFUSES, 409: 'A file of it is no longer there.' },
  })
  async archive(
    @Param('token') token: string,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<StreamableFile> {
    const permit = readCookie(request, 'desk_collection');
    return sendArchive(reply, await this.collections.archive(token, permit));
  }
}
