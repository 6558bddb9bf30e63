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
import { StationsService } from './kept-services.js';
import { ManagersMay, StaffMay } from './who-may.js';

const NAMES = { one: 'station', schema: 'Station' };

@ApiTags('fleet')
@Controller('api/stations')
export class StationsController {
  constructor(private readonly stations: StationsService) {}

  @Get()
  @StaffMay()
  @DescribeList(NAMES)
  list(@Query() query: unknown): Promise<object> {
    return this.stations.list(query);
  }

  @Get(':id')
  @StaffMay()
  @DescribeRead(NAMES)
  async read(@Param('id') id: string, @Res({ passthrough: true }) reply: FastifyReply): Promise<object> {
    return answerVersioned(reply, await this.stations.read(id));
  }

  @Get(':id/versions')
  @StaffMay()
  @DescribeVersions(NAMES)
  versions(@Param('id') id: string, @Query() query: unknown): Promise<object> {
    return this.stations.versions(id, query);
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
    return answerCreated(reply, '/api/stations', await this.stations.create(body, key, actor));
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
    return answerVersioned(reply, await this.stations.replace(id, body, ifMatch, actor));
  }
}
