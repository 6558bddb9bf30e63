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
import { PlacesService } from './kept-services.js';
import { ManagersMay, StaffMay } from './who-may.js';

const NAMES = { one: 'place', schema: 'FleetPlace' };

@ApiTags('fleet')
@Controller('api/places')
export class PlacesController {
  constructor(private readonly places: PlacesService) {}

  @Get()
  @StaffMay()
  @DescribeList(NAMES)
  list(@Query() query: unknown): Promise<object> {
    return this.places.list(query);
  }

  @Get(':id')
  @StaffMay()
  @DescribeRead(NAMES)
  async read(@Param('id') id: string, @Res({ passthrough: true }) reply: FastifyReply): Promise<object> {
    return answerVersioned(reply, await this.places.read(id));
  }

  @Get(':id/versions')
  @StaffMay()
  @DescribeVersions(NAMES)
  versions(@Param('id') id: string, @Query() query: unknown): Promise<object> {
    return this.places.versions(id, query);
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
    return answerCreated(reply, '/api/places', await this.places.create(body, key, actor));
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
    return answerVersioned(reply, await this.places.replace(id, body, ifMatch, actor));
  }
}
