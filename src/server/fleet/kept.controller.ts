import { Body, Get, Headers, Param, Post, Put, Query, Res } from '@nestjs/common';
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
import type { KeptService } from './kept.service.js';
import { ManagersMay } from './who-may.js';

type Kept = Pick<KeptService<never, never>, 'list' | 'read' | 'versions' | 'create' | 'replace'>;

interface KeptRoutes {
  readonly path: string;
  readonly one: string;
  /** Name of the schema of one of them. */
  readonly schema: string;
  readonly readersMay: () => MethodDecorator;
  /** Why another one like it is refused, where it is. */
  readonly twin?: string;
}

/** The routes of a kind of thing that is kept in versions; a controller of the kind extends what this gives. */
export function keptController<Service extends Kept>({ path, readersMay, twin, ...names }: KeptRoutes) {
  class KeptController {
    constructor(readonly kept: Service) {}

    @Get()
    @readersMay()
    @DescribeList(names)
    list(@Query() query: unknown): Promise<object> {
      return this.kept.list(query);
    }

    @Get(':id')
    @readersMay()
    @DescribeRead(names)
    async read(@Param('id') id: string, @Res({ passthrough: true }) reply: FastifyReply): Promise<object> {
      return answerVersioned(reply, await this.kept.read(id));
    }

    @Get(':id/versions')
    @readersMay()
    @DescribeVersions(names)
    versions(@Param('id') id: string, @Query() query: unknown): Promise<object> {
      return this.kept.versions(id, query);
    }

    @Post()
    @ManagersMay()
    @DescribeCreate(names, twin)
    async create(
      @Body() body: unknown,
      @Headers('idempotency-key') key: string | undefined,
      @CurrentActor() actor: Actor,
      @Res({ passthrough: true }) reply: FastifyReply,
    ): Promise<object> {
      return answerCreated(reply, `/api/${path}`, await this.kept.create(body, key, actor));
    }

    @Put(':id')
    @ManagersMay()
    @DescribeReplace(names, twin)
    async replace(
      @Param('id') id: string,
      @Body() body: unknown,
      @Headers('if-match') ifMatch: string | undefined,
      @CurrentActor() actor: Actor,
      @Res({ passthrough: true }) reply: FastifyReply,
    ): Promise<object> {
      return answerVersioned(reply, await this.kept.replace(id, body, ifMatch, actor));
    }
  }
  return KeptController;
}
