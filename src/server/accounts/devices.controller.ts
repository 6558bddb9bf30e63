import { Body, Controller, Delete, Get, Headers, HttpCode, Param, Post, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { DeviceCreationDto } from '../../../shared/wire/accounts-device.dto.js';
import { readMembers } from '../../../shared/wire/accounts-read.js';
import { readPageQuery } from '../../../shared/wire/page-query.dto.js';
import { pageRequest } from '../platform/http/cursor.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { CurrentPerson, type PersonActor } from './actor.js';
import { DevicesService } from './devices.service.js';

/** The devices as administrators see them. */
@ApiTags('accounts')
@Controller('api/devices')
export class DevicesController {
  constructor(private readonly service: DevicesService) {}

  @Get()
  @MayUse('administrator')
  @DescribeRoute({
    operationId: 'listDevices',
    summary: 'The shared devices, the oldest first, with when each was last used',
    query: { 'limit?': '25', 'after?': 'WyJhbmEiLCJhMSJd' },
    answer: 'DevicePage',
    refuses: { 422: 'The query cannot be used.' },
  })
  list(@Query() query: unknown): Promise<object> {
    return this.service.list(pageRequest(readInput(readPageQuery(query), 'query')));
  }

  @Post()
  @MayUse('administrator')
  @DescribeRoute({
    operationId: 'createDevice',
    summary: 'Get a code, shown once, that enrols one device within 15 minutes',
    body: 'DeviceCreation',
    answer: 'NewDevice',
    status: 201,
    once: true,
  })
  async create(
    @Body() body: unknown,
    @CurrentPerson() person: PersonActor,
    @Headers('idempotency-key') key: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const draft = readInput(readMembers(DeviceCreationDto, body));
    const device = await this.service.create(draft, readIdempotencyKey(key), person);
    return answerCreated(reply, '/api/devices', device);
  }

  @Delete(':id')
  @MayUse('administrator')
  @HttpCode(200)
  @DescribeRoute({
    operationId: 'revokeDevice',
    summary: 'Shut a device out, with every session that was begun on it',
    params: { id: '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10' },
    answer: 'Device',
    refuses: { 404: 'There is no such device.' },
  })
  revoke(@Param('id') id: string): Promise<object> {
    return this.service.revoke(id);
  }
}
