import { Body, Controller, Get, Headers, Param, Post, Put, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { CraftWordsDto } from '../../../shared/wire/fleet-requests.dto.js';
import { readFleetInput } from '../../../shared/wire/fleet-values.js';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { readInput } from '../platform/http/read-input.js';
import {
  DescribeCreate,
  DescribeList,
  DescribeRead,
  DescribeReplace,
  DescribeVersions,
} from './describe-kept.js';
import { Fleet } from './fleet.js';
import { CraftService } from './kept-services.js';
import { ManagersMay, StaffMay } from './who-may.js';

const NAMES = { one: 'craft', schema: 'FleetCraft' };

@ApiTags('fleet')
@Controller('api/craft')
export class CraftController {
  constructor(
    private readonly craft: CraftService,
    private readonly fleet: Fleet,
  ) {}

  @Get()
  @StaffMay()
  @DescribeList(NAMES)
  list(@Query() query: unknown): Promise<object> {
    return this.craft.list(query);
  }

  @Get('matches')
  @StaffMay()
  @DescribeRoute({
    operationId: 'matchCraft',
    summary: 'The craft that a caller may mean, the likeliest first',
    query: { words: 'help, PWC 7' },
    answer: 'CraftMatches',
    refuses: { 422: 'The query cannot be used.' },
  })
  async match(@Query() query: unknown): Promise<object> {
    const { words } = readInput(readFleetInput(CraftWordsDto, query), 'query');
    return { items: await this.fleet.findCraft(words) };
  }

  @Get(':id')
  @StaffMay()
  @DescribeRead(NAMES)
  async read(@Param('id') id: string, @Res({ passthrough: true }) reply: FastifyReply): Promise<object> {
    return answerVersioned(reply, await this.craft.read(id));
  }

  @Get(':id/versions')
  @StaffMay()
  @DescribeVersions(NAMES)
  versions(@Param('id') id: string, @Query() query: unknown): Promise<object> {
    return this.craft.versions(id, query);
  }

  @Post()
  @ManagersMay()
  @DescribeCreate(NAMES, 'Another craft in the fleet goes by that unit name.')
  async create(
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    return answerCreated(reply, '/api/craft', await this.craft.create(body, key, actor));
  }

  @Put(':id')
  @ManagersMay()
  @DescribeReplace(NAMES, 'Another craft in the fleet goes by that unit name.')
  async replace(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    return answerVersioned(reply, await this.craft.replace(id, body, ifMatch, actor));
  }
}
