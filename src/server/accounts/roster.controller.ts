import {
  Body,
  Controller,
  Delete,
  Get,
  Headers,
  HttpCode,
  Param,
  Patch,
  Post,
  Query,
  Res,
} from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { readMembers } from '../../../shared/wire/accounts-read.js';
import {
  findDayOrderFaults,
  RosterEntryChangeDto,
  RosterEntryDto,
  RosterQueryDto,
} from '../../../shared/wire/accounts-roster.dto.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { CurrentPerson, type PersonActor } from './actor.js';
import { RosterService } from './roster.service.js';

const ID = '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10';
const NOT_THERE = { 404: 'There is no such entry.' };
const daysInOrder = ({ from, to }: { from: string; to: string }) => findDayOrderFaults(from, to, '/to');

@ApiTags('accounts')
@Controller('api/roster')
export class RosterController {
  constructor(private readonly service: RosterService) {}

  @Get()
  @MayUse('staff', 'manager', 'administrator')
  @DescribeRoute({
    operationId: 'readRoster',
    summary: 'Who is on as what, and whose certificates are out of date',
    query: { from: '2026-06-13', to: '2026-06-13' },
    answer: 'Roster',
    refuses: { 422: 'The query cannot be used.' },
  })
  async list(@Query() query: unknown): Promise<object> {
    return {
      items: await this.service.list(readInput(readMembers(RosterQueryDto, query, daysInOrder), 'query')),
    };
  }

  @Post()
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'createRosterEntry',
    summary: 'Put somebody on the roster',
    body: 'RosterEntryCreation',
    answer: 'RosterEntry',
    status: 201,
    once: true,
  })
  async create(
    @Body() body: unknown,
    @CurrentPerson() person: PersonActor,
    @Headers('idempotency-key') key: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const draft = readInput(readMembers(RosterEntryDto, body, daysInOrder));
    return answerCreated(
      reply,
      '/api/roster',
      await this.service.create(draft, readIdempotencyKey(key), person),
    );
  }

  @Patch(':id')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'changeRosterEntry',
    summary: 'Change duty or days',
    params: { id: ID },
    body: 'RosterEntryChange',
    answer: 'RosterEntry',
    versioned: true,
    refuses: NOT_THERE,
  })
  async change(
    @Param('id') id: string,
    @Body() body: unknown,
    @CurrentPerson() person: PersonActor,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const change = readInput(readMembers(RosterEntryChangeDto, body));
    return answerVersioned(reply, await this.service.change(id, change, ifMatch, person));
  }

  @Delete(':id')
  @MayUse('manager', 'administrator')
  @HttpCode(204)
  @DescribeRoute({
    operationId: 'withdrawRosterEntry',
    summary: 'Take somebody off the roster',
    params: { id: ID },
    versioned: true,
    refuses: NOT_THERE,
  })
  withdraw(
    @Param('id') id: string,
    @CurrentPerson() person: PersonActor,
    @Headers('if-match') ifMatch: string | undefined,
  ): Promise<void> {
    return this.service.withdraw(id, ifMatch, person);
  }
}
