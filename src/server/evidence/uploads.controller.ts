import { Body, Controller, Delete, Get, Headers, HttpCode, Param, Patch, Post, Res } from '@nestjs/common';
import { ApiBody, ApiConsumes, ApiHeader, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated } from '../platform/http/entity-tag.js';
import { OCTETS } from '../platform/http/read-octets.js';
import { FILE_ID, INCIDENT_ID } from './evidence-examples.js';
import { UploadArrival } from './upload-arrival.js';
import { UploadsService } from './uploads.service.js';
import { ReadersMay, SendersMay, StaffMay } from './who-may.js';

const params = { id: INCIDENT_ID };
const ofUpload = { ...params, upload: FILE_ID };
const NOT_THERE = { 404: 'There is no such incident or upload.' };

/** Files on their way in, after the ideas of open protocols for resumable uploads: offsets, and one piece after another. */
@ApiTags('evidence')
@Controller('api/incidents/:id/evidence/uploads')
export class UploadsController {
  constructor(
    private readonly uploads: UploadsService,
    private readonly arrival: UploadArrival,
  ) {}

  @Post()
  @SendersMay()
  @DescribeRoute({
    operationId: 'startEvidenceUpload',
    summary: 'Announces a photograph, video, recording or document before its bytes are sent',
    params,
    body: 'EvidenceUploadDetails',
    answer: 'EvidenceUpload',
    status: 201,
    once: true,
    refuses: { 404: 'There is no such incident.' },
  })
  async start(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const upload = await this.uploads.start(id, body, key, actor);
    tellOffset(reply)(upload.offset);
    return answerCreated(reply, `/api/incidents/${id}/evidence/uploads`, upload);
  }

  @Get(':upload')
  @ReadersMay()
  @DescribeRoute({
    operationId: 'readEvidenceUpload',
    summary: 'How much of a file has arrived, also as the header Upload-Offset (with HEAD)',
    params: ofUpload,
    answer: 'EvidenceUpload',
    refuses: NOT_THERE,
  })
  async read(
    @Param('id') id: string,
    @Param('upload') upload: string,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const found = await this.uploads.read(id, upload, actor);
    tellOffset(reply)(found.offset);
    return found;
  }

  @Patch(':upload')
  @HttpCode(204)
  @SendersMay()
  @ApiConsumes(OCTETS)
  @ApiBody({ schema: { type: 'string', format: 'binary' } })
  @ApiHeader({ name: 'Upload-Offset', required: true, description: 'The byte at which the piece begins.' })
  @DescribeRoute({
    operationId: 'sendEvidencePiece',
    summary: 'The next piece of a file; what arrived of one that broke off is kept',
    description:
      'The answer, also a refusal, says in Upload-Offset where the next piece begins. A device that does not know sends an empty piece at 0.',
    params: ofUpload,
    refuses: {
      ...NOT_THERE,
      400: 'No Upload-Offset was sent.',
      408: 'The line broke off.',
      409: 'The next piece begins elsewhere: `current.offset` says where.',
      413: 'The piece is larger than `longestPiece`.',
      503: 'The disk is full.',
      415: `The body is not ${OCTETS}.`,
      422: 'More came than was announced, or by its content it is nothing that is taken.',
    },
  })
  append(
    @Param('id') id: string,
    @Param('upload') upload: string,
    @Body() body: unknown,
    @Headers('upload-offset') offset: string | undefined,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    return this.uploads.append(id, upload, { offset, body }, actor, tellOffset(reply));
  }

  @Post(':upload/finish')
  @SendersMay()
  @DescribeRoute({
    operationId: 'finishEvidenceUpload',
    summary: 'Makes evidence of a file that has arrived; the same again tells the same',
    params: ofUpload,
    answer: 'EvidenceReceipt',
    status: 201,
    refuses: {
      ...NOT_THERE,
      409: 'Bytes are missing, or they are not those that the device read: `current.offset` says where to go on.',
      422: 'By its content it is nothing that is taken: why is said.',
      503: 'The disk is full.',
    },
  })
  async finish(
    @Param('id') id: string,
    @Param('upload') upload: string,
    @CurrentActor() actor: Actor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    return answerCreated(
      reply,
      `/api/incidents/${id}/evidence`,
      await this.arrival.finish(id, upload, actor),
    );
  }

  @Delete(':upload')
  @HttpCode(204)
  @StaffMay()
  @DescribeRoute({
    operationId: 'dropEvidenceUpload',
    summary: 'Drops what has arrived of a file that nobody finished',
    params: ofUpload,
    refuses: { ...NOT_THERE, 409: 'It has arrived: a wrong file is withdrawn.' },
  })
  drop(
    @Param('id') id: string,
    @Param('upload') upload: string,
    @CurrentActor() actor: Actor,
  ): Promise<void> {
    return this.uploads.drop(id, upload, actor);
  }
}

const tellOffset =
  (reply: FastifyReply) =>
  (offset: number): void =>
    void reply.header('upload-offset', String(offset));
