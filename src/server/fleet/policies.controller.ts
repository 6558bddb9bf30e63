import { Body, Controller, Get, Headers, Param, Post, Put, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import {
  DescribeCreate,
  DescribeList,
  DescribeRead,
  DescribeReplace,
  DescribeVersions,
} from './describe-kept.js';
import { PoliciesService } from './kept-services.js';
import { ManagersMay } from './who-may.js';

const NAMES = { one: 'policy', schema: 'Policy' };

@ApiTags('fleet')
@Controller('api/policies')
export class PoliciesController {
  constructor(private readonly policies: PoliciesService) {}

  @Get()
  @ManagersMay()
  @DescribeList(NAMES)
  list(@Query() query: unknown): Promise<object> {
    return this.policies.list(query);
  }

  @Get(':id')
  @ManagersMay()
  @DescribeRead(NAMES)
  async read(@Param('id') id: string, @Res({ passthrough: true }) reply: FastifyReply): Promise<object> {
    return answerVersioned(reply, await this.policies.read(id));
  }

  @Get(':id/versions')
  @ManagersMay()
  @DescribeVersions(NAMES)
  versions(@Param('id') id: string, @Query() query: unknown): Promise<object> {
    return this.policies.versions(id, query);
  }

  @Post()
  @ManagersMay()
  @DescribeCreate(NAMES)
  async create(
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    return answerCreated(reply, '/api/policies', await this.policies.create(body, key, actor));
  }

  @Put(':id')
  @ManagersMay()
  @DescribeReplace(NAMES)
  async replace(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    return answerVersioned(reply, await this.policies.replace(id, body, ifMatch, actor));
  }
}
