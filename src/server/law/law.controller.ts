import { Controller, Get, Headers, Param, Res } from '@nestjs/common';
import { ApiOkResponse, ApiOperation, ApiParam, ApiResponse, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { Clock } from '../platform/clock.js';
import { MayUse } from '../platform/http/may-use.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';
import { sendSheet } from '../platform/http/send-sheet.js';
import { LawShelf } from './law-shelf.js';

@ApiTags('law')
@Controller('api/law')
export class LawController {
  constructor(
    private readonly shelf: LawShelf,
    private readonly clock: Clock,
  ) {}

  @Get()
  @MayUse('anyone')
  @ApiOperation({ operationId: 'listLaw', summary: 'The rule packs in force, the federal one first' })
  @ApiOkResponse({ description: 'One entry a jurisdiction, with when and how well its law was read.' })
  @ApiResponse({ status: 304, description: 'Unchanged since the entity tag sent as If-None-Match.' })
  list(@Res() reply: FastifyReply, @Headers('if-none-match') known?: string): void {
    sendSheet(reply, this.shelf.list, known);
  }

  @Get('packs')
  @MayUse('anyone')
  @ApiOperation({
    operationId: 'readAllLaw',
    summary: 'Every rule pack whole, the federal one first: what a determination needs beside the facts',
  })
  @ApiOkResponse({
    description: 'The rule packs as they are applied.',
    content: {
      'application/json': { schema: { type: 'array', items: { $ref: '#/components/schemas/RulePack' } } },
    },
  })
  @ApiResponse({ status: 304, description: 'Unchanged since the entity tag sent as If-None-Match.' })
  readAll(@Res() reply: FastifyReply, @Headers('if-none-match') known?: string): void {
    sendSheet(reply, this.shelf.all, known);
  }

  @Get('due')
  @MayUse('administrator')
  @ApiOperation({
    operationId: 'listDueLaw',
    summary: 'Law that is due to be read again, the longest overdue first',
  })
  @ApiOkResponse({
    description: 'Empty while none is; `LAW_RECHECK_MONTHS` says after how long.',
    schema: {
      type: 'object',
      required: ['items'],
      properties: {
        items: {
          type: 'array',
          items: {
            type: 'object',
            properties: {
              pack: { type: 'string' },
              name: { type: 'string' },
              readOn: { type: 'string', format: 'date' },
              dueOn: { type: 'string', format: 'date' },
              basis: { type: 'string' },
            },
          },
        },
      },
    },
  })
  due(): object {
    return { items: this.shelf.due(this.clock.now().slice(0, 10)) };
  }

  @Get(':code')
  @MayUse('anyone')
  @ApiOperation({
    operationId: 'readLaw',
    summary: 'One jurisdiction: its triggers, limits, sources and doubts',
  })
  @ApiParam({ name: 'code', description: 'USPS code, or US for the federal rule.', example: 'TX' })
  @ApiOkResponse({
    description: 'The rule pack as it is applied.',
    content: { 'application/json': { schema: { $ref: '#/components/schemas/RulePack' } } },
  })
  @ApiResponse({ status: 304, description: 'Unchanged since the entity tag sent as If-None-Match.' })
  @ApiResponse({
    status: 404,
    description: 'No law is kept for that code; no sign that nothing is due.',
    content: { 'application/problem+json': { schema: { $ref: '#/components/schemas/Problem' } } },
  })
  read(
    @Res() reply: FastifyReply,
    @Param('code') code: string,
    @Headers('if-none-match') known?: string,
  ): void {
    sendSheet(reply, this.shelf.pack(code) ?? unknownCode(code), known);
  }
}

function unknownCode(code: string): never {
  throw new ProblemException(
    problemOfStatus(
      404,
      `No law is kept here for ${code}. That is no sign that nothing is due: ask its boating law administrator.`,
    ),
  );
}
