import { Controller, Get, Param, Res, type StreamableFile } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { CurrentPerson, type PersonActor } from '../../accounts/accounts.api.js';
import { DescribeRoute } from '../../platform/http/describe-route.js';
import { MayUse } from '../../platform/http/may-use.js';
import { CounselCollections } from './counsel-collections.service.js';
import type { Collection } from './link-packets.js';
import { closeToOthers, sendArchive } from './send-archive.js';

const params = { token: 'q3vX0lJ4b8mS6t1yZ9wK2nR5cD7fG0hA3eB6uL8iPoM' };
const REFUSES = {
  403: 'It is for another lawyer, or opens by a passcode.',
  404: 'Nothing opens here: the link has expired, was taken back, or the incident is no longer assigned.',
};

/** For the lawyer who was sent a packet with notes for counsel, signed in. */
@ApiTags('hand-over')
@Controller('api/collections/:token/for-counsel')
export class CounselCollectionsController {
  constructor(private readonly collections: CounselCollections) {}

  @Get()
  @MayUse('counsel')
  @DescribeRoute({
    operationId: 'lookAtCollectionForCounsel',
    summary: 'What waits here, from whom, why and until when; the look is written into the log of the record',
    params,
    answer: 'Collection',
    refuses: REFUSES,
  })
  look(
    @Param('token') token: string,
    @CurrentPerson() actor: PersonActor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<Collection> {
    closeToOthers(reply);
    return this.collections.look(token, actor);
  }

  @Get('archive')
  @MayUse('counsel')
  @ApiProduces('application/zip')
  @DescribeRoute({
    operationId: 'collectPacketForCounsel',
    summary: 'The packet as one archive; beginning and end of the download are written into the log',
    params,
    status: 200,
    refuses: { ...REFUSES, 409: 'A file of it is no longer there.' },
  })
  async archive(
    @Param('token') token: string,
    @CurrentPerson() actor: PersonActor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<StreamableFile> {
    return sendArchive(reply, await this.collections.archive(token, actor));
  }
}
