import { Body, Controller, Get, Headers, Param, Post, Res } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import { CounselRequestDto, PrivilegedEntryDto } from '../../../shared/wire/record-requests.dto.js';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { answerCreated } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { WithKey, bodyOf } from './api-words.js';
import { PrivilegedService } from './privileged.service.js';

@ApiTags('record')
@Controller('api/incidents/:id')
export class PrivilegedController {
  constructor(private readonly privileged: PrivilegedService) {}

  @Post('counsel-requests')
  @MayUse('manager', 'administrator')
  @WithKey()
  @ApiOperation({
    operationId: 'enterCounselRequest',
    summary: 'That counsel asked for notes: who and when',
  })
  @ApiBody(bodyOf(CounselRequestDto))
  async request(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ) {
    const input = readInput(readRecordInput(CounselRequestDto, body));
    const made = await this.privileged.request(id, input, readIdempotencyKey(key), actor);
    return answerCreated(reply, `/api/incidents/${id}/counsel-requests`, made);
  }

  @Get('counsel-requests')
  @MayUse('manager', 'administrator', 'counsel')
  @ApiOperation({ operationId: 'listCounselRequests', summary: 'Who asked and when; no note among them' })
  requests(@Param('id') id: string, @CurrentActor() actor: Actor) {
    return this.privileged.requests(id, actor);
  }

  @Post('counsel-requests/:request/entries')
  @MayUse('manager', 'administrator')
  @WithKey()
  @ApiOperation({
    operationId: 'writePrivilegedEntry',
    summary: 'A note for counsel, apart from the record',
  })
  @ApiBody(bodyOf(PrivilegedEntryDto))
  async write(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('request') request: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ) {
    const input = readInput(readRecordInput(PrivilegedEntryDto, body));
    const made = await this.privileged.write(id, request, input, readIdempotencyKey(key), actor);
    return answerCreated(reply, `/api/incidents/${id}/counsel-requests/${request}/entries`, made);
  }

  @Get('privileged')
  @MayUse('counsel')
  @ApiOperation({
    operationId: 'readPrivileged',
    summary: 'The notes, for counsel that was assigned the incident',
  })
  read(@Param('id') id: string, @CurrentActor() actor: Actor) {
    return this.privileged.read(id, actor);
  }
}
