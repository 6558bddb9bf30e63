import { Body, Controller, Delete, Get, Headers, HttpCode, Param, Post, Put, Res } from '@nestjs/common';
import { ApiBody, ApiOperation, ApiParam, ApiResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { SECTION_NAMES } from '../../../shared/record/incident-record.js';
import type { JsonSchema } from '../../../shared/wire/record-members.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import {
  WithdrawDto,
  WithdrawReasonDto,
  WriteDraftDto,
  WriteSectionDto,
} from '../../../shared/wire/record-requests.dto.js';
import { sectionSchema } from '../../../shared/wire/record-sections.js';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { answerVersioned } from '../platform/http/entity-tag.js';
import { MayUse } from '../platform/http/may-use.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';
import { readInput } from '../platform/http/read-input.js';
import { isObject } from '../../../shared/wire/is-object.js';
import { answerOf, PROBLEM, WithVersion, bodyOf } from './api-words.js';
import { DraftsService } from './drafts.service.js';
import { sectionNamed } from './incident-access.js';
import { SectionsService } from './sections.service.js';
import { WithdrawalsService } from './withdrawals.service.js';

const REASON_WITHDRAWN: JsonSchema = {
  type: 'object',
  required: ['sequence', 'reasonWithdrawn'],
  properties: { sequence: { type: 'integer' }, reasonWithdrawn: { const: true } },
  examples: [{ sequence: 12, reasonWithdrawn: true }],
};

const SECTION = ApiParam({ name: 'section', enum: [...SECTION_NAMES] });
const WITHDRAWN_FROM = ApiParam({
  name: 'section',
  enum: [...SECTION_NAMES, 'holds', 'scope-answers'],
  description: 'Of the last two, which the service writes, only the words of a reason.',
});

@ApiTags('record')
@Controller('api/incidents/:id')
export class SectionsController {
  constructor(
    private readonly sections: SectionsService,
    private readonly drafts: DraftsService,
    private readonly withdrawals: WithdrawalsService,
  ) {}

  @Get('sections/:section')
  @MayUse('staff', 'manager', 'administrator', 'counsel')
  @SECTION
  @ApiOperation({ operationId: 'readSection', summary: 'One section; version 0 while nobody has written it' })
  async read(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('section') section: string,
    @CurrentActor() actor: Actor,
  ) {
    return answerVersioned(reply, await this.sections.read(id, section, actor));
  }

  @Get('sections/:section/schema')
  @MayUse('anyone')
  @SECTION
  @ApiOperation({ operationId: 'readSectionSchema', summary: 'The JSON Schema of a section' })
  schema(@Param('section') section: string): JsonSchema {
    return sectionSchema(sectionNamed(section));
  }

  @Put('sections/:section')
  @MayUse('staff', 'manager', 'administrator', 'device')
  @SECTION
  @WithVersion()
  @ApiOperation({
    operationId: 'writeSection',
    summary: 'Finishes a section, or amends it',
    description:
      'With If-Match: the ETag of the version it is made on, "0" for a section nobody has written.',
  })
  @ApiBody(bodyOf(WriteSectionDto, { people: { document: { people: [{ id: 'p1', name: 'Ann' }] } } }))
  @ApiResponse({ status: 412, description: 'Changed meanwhile: both versions.', content: PROBLEM })
  @ApiResponse({ status: 422, description: 'Each fault at its pointer.', content: PROBLEM })
  @ApiResponse({ status: 428, description: 'If-Match is missing.', content: PROBLEM })
  async write(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('section') section: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentActor() actor: Actor,
  ) {
    const input = readInput(readRecordInput(WriteSectionDto, body));
    return answerVersioned(reply, await this.sections.write(id, section, input, ifMatch, actor));
  }

  @Post('sections/:section/additions')
  @HttpCode(200)
  @MayUse('staff', 'manager', 'administrator', 'device')
  @SECTION
  @ApiOperation({
    operationId: 'addToSection',
    summary: 'Adds fields and items and alters nothing',
    description:
      'For lines of the timeline and whatever a shared phone adds; the same again changes nothing.',
  })
  @ApiResponse({ status: 409, description: 'Something else stands there.', content: PROBLEM })
  async add(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('section') section: string,
    @Body() body: unknown,
    @CurrentActor() actor: Actor,
  ) {
    return answerVersioned(reply, await this.sections.add(id, section, anObject(body), actor));
  }

  @Post('sections/:section/withdrawals')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @WITHDRAWN_FROM
  @ApiOperation({
    operationId: 'withdrawField',
    summary: 'Takes the content of a field out; the reason stays',
  })
  @ApiBody(
    bodyOf(WithdrawDto, {
      phone: { path: '/people/p1/phone', reason: 'Of another person.' },
      held: {
        path: '/people/p1',
        reason: 'Was not there.',
        counsel: 'Cleo Law',
        directedOn: '2026-06-20',
      },
    }),
  )
  @ApiResponse({
    status: 409,
    description: 'The incident is held: counsel has to be named.',
    content: PROBLEM,
  })
  async withdraw(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('section') section: string,
    @Body() body: unknown,
    @CurrentActor() actor: Actor,
  ) {
    const input = readInput(readRecordInput(WithdrawDto, body));
    return answerVersioned(reply, await this.withdrawals.withdraw(id, section, input, actor));
  }

  @Post('amendments/:sequence/withdrawals')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @ApiOperation({
    operationId: 'withdrawReason',
    summary: "Takes the words of an amendment's reason out; that there was one stays",
  })
  @ApiBody(bodyOf(WithdrawReasonDto, { number: { reason: 'It held a telephone number.' } }))
  @ApiResponse(answerOf(REASON_WITHDRAWN))
  @ApiResponse({
    status: 409,
    description: 'The incident is held: counsel has to be named.',
    content: PROBLEM,
  })
  withdrawReason(
    @Param('id') id: string,
    @Param('sequence') sequence: string,
    @Body() body: unknown,
    @CurrentActor() actor: Actor,
  ) {
    const input = readInput(readRecordInput(WithdrawReasonDto, body));
    return this.withdrawals.withdrawReason(id, sequenceOf(sequence), input, actor);
  }

  @Get('drafts')
  @MayUse('staff', 'manager', 'administrator')
  @ApiOperation({ operationId: 'listDrafts', summary: 'What the caller is writing and has not finished' })
  listDrafts(@Param('id') id: string, @CurrentActor() actor: Actor) {
    return this.drafts.list(id, actor);
  }

  @Put('drafts/:section')
  @MayUse('staff', 'manager', 'administrator', 'device')
  @SECTION
  @ApiOperation({ operationId: 'saveDraft', summary: 'Keeps what is being written; no amendment' })
  @ApiBody(bodyOf(WriteDraftDto))
  saveDraft(
    @Param('id') id: string,
    @Param('section') section: string,
    @Body() body: unknown,
    @CurrentActor() actor: Actor,
  ) {
    return this.drafts.save(id, section, readInput(readRecordInput(WriteDraftDto, body)), actor);
  }

  @Delete('drafts/:section')
  @HttpCode(204)
  @MayUse('staff', 'manager', 'administrator', 'device')
  @SECTION
  @ApiOperation({ operationId: 'removeDraft', summary: 'Drops what was being written' })
  removeDraft(@Param('id') id: string, @Param('section') section: string, @CurrentActor() actor: Actor) {
    return this.drafts.remove(id, section, actor);
  }
}

/** Numbers that no amendment has are answered like those that none has yet. */
function sequenceOf(text: string): number {
  return /^[1-9]\d{0,8}$/.test(text) ? Number(text) : 0;
}

function anObject(body: unknown): object {
  if (isObject(body)) return body;
  const errors = [{ pointer: '', detail: 'Must be an object with what is added.' }];
  throw new ProblemException({ ...problemOfStatus(422), source: 'request', errors });
}
