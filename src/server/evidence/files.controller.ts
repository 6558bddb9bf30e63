import type { Readable } from 'node:stream';
import {
  Body,
  Controller,
  Get,
  Headers,
  HttpCode,
  Param,
  Patch,
  Post,
  Query,
  Res,
  StreamableFile,
} from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { AS_OF, DescribeRoute } from '../platform/http/describe-route.js';
import { answerVersioned } from '../platform/http/entity-tag.js';
import { attachment } from './attachment.js';
import { FILE_ID, INCIDENT_ID } from './evidence-examples.js';
import { FilesService } from './files.service.js';
import { PREVIEW_TYPE } from './previews.js';
import { ManagersMay, ReadersMay, StaffMay } from './who-may.js';
import { WithdrawalService } from './withdrawal.service.js';

const params = { id: INCIDENT_ID };
const ofFile = { ...params, file: FILE_ID };
const NOT_THERE = { 404: 'There is no such incident or file, or it is not yours to see.' };

/** Evidence as it stands in the record, its originals and its previews. */
@ApiTags('evidence')
@Controller('api/incidents/:id/evidence')
export class FilesController {
  constructor(
    private readonly files: FilesService,
    private readonly withdrawals: WithdrawalService,
  ) {}

  @Get()
  @ReadersMay()
  @DescribeRoute({
    operationId: 'listEvidence',
    summary: 'The files of an incident, with what they leave open beside the record',
    description:
      'Originals of statements, and pictures that may show somebody who died, are for managers, administrators and counsel.',
    params,
    query: AS_OF,
    answer: 'EvidenceList',
    refuses: NOT_THERE,
  })
  list(@Param('id') id: string, @Query() query: unknown, @CurrentActor() actor: Actor): Promise<object> {
    return this.files.list(id, query, actor);
  }

  @Get(':file')
  @ReadersMay()
  @DescribeRoute({
    operationId: 'readEvidence',
    summary: 'One file: what it is, what is said about it, and what it leaves open',
    params: ofFile,
    answer: 'EvidenceFile',
    refuses: NOT_THERE,
  })
  async read(
    @Param('id') id: string,
    @Param('file') file: string,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    return answerVersioned(reply, await this.files.read(id, file, actor));
  }

  @Get(':file/original')
  @ReadersMay()
  @DescribeRoute({
    operationId: 'downloadEvidence',
    summary: 'The original, byte for byte; a download of one that was changed breaks off',
    params: ofFile,
    status: 200,
    refuses: { ...NOT_THERE, 409: 'What is kept is missing or is not what arrived.' },
  })
  async original(
    @Param('id') id: string,
    @Param('file') fileId: string,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<StreamableFile> {
    const { file, bytes } = await this.files.original(id, fileId, actor);
    return send(reply, bytes, { ...attachment(file.name ?? file.id), type: file.type, length: file.size });
  }

  @Get(':file/previews/:edge')
  @ReadersMay()
  @DescribeRoute({
    operationId: 'readEvidencePreview',
    summary: 'A smaller picture of a photograph, upright and without metadata (WebP)',
    params: { ...ofFile, edge: '320' },
    status: 200,
    refuses: { 404: 'There is no preview of it: download the original.' },
  })
  async preview(
    @Param('id') id: string,
    @Param('file') file: string,
    @Param('edge') edge: string,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<StreamableFile> {
    const bytes = await this.files.preview(id, file, edge, actor);
    return send(reply, bytes, { ...attachment(`${file}-${edge}.webp`), type: PREVIEW_TYPE });
  }

  @Patch(':file')
  @StaffMay()
  @DescribeRoute({
    operationId: 'changeEvidence',
    summary: 'Says other words about a file: caption, whom and which craft it shows, who may see it',
    params: ofFile,
    body: 'EvidenceChange',
    answer: 'EvidenceFile',
    versioned: true,
    refuses: NOT_THERE,
  })
  async change(
    @Param('id') id: string,
    @Param('file') file: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    return answerVersioned(reply, await this.files.change(id, file, body, ifMatch, actor));
  }

  @Post(':file/withdrawal')
  @HttpCode(200)
  @ManagersMay()
  @DescribeRoute({
    operationId: 'withdrawEvidence',
    summary: 'Takes the content of a wrong file out; its hash and the reason stay',
    params: ofFile,
    body: 'EvidenceWithdrawal',
    answer: 'EvidenceReceipt',
    refuses: { ...NOT_THERE, 409: 'It was withdrawn before, or a hold is on and no lawyer is named.' },
  })
  withdraw(
    @Param('id') id: string,
    @Param('file') file: string,
    @Body() body: unknown,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.withdrawals.withdraw(id, file, body, actor);
  }
}

/** What came from outside is never shown as a page of this service, whatever a browser makes of it. */
function send(
  reply: FastifyReply,
  bytes: Readable,
  options: ConstructorParameters<typeof StreamableFile>[1],
): StreamableFile {
  void reply.header('content-security-policy', "default-src 'none'; sandbox");
  return new StreamableFile(bytes, options);
}
