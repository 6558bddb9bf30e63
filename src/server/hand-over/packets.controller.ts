import { Body, Controller, Get, Headers, HttpCode, Param, Post, Res, StreamableFile } from '@nestjs/common';
import { ApiProduces, ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { PacketDeliveryDto, PacketDraftDto } from '../../../shared/wire/hand-over-requests.dto.js';
import { readRecordInput } from '../../../shared/wire/record-reading.js';
import { CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { PacketsService } from './packets.service.js';

const INCIDENT = { id: 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03' };
const PACKET = { ...INCIDENT, packet: '7a2f0c9e-51de-4b0b-9a3e-0d6a9d1c2e11' };
const NO_INCIDENT = { 404: 'There is no such incident for you.' };
const NO_PACKET = { 404: 'There is no such incident for you, or no such packet of it.' };

/** What leaves the house about an incident: seen item by item before, and kept as it was sent. */
@ApiTags('hand-over')
@Controller('api/incidents/:id')
export class PacketsController {
  constructor(private readonly packets: PacketsService) {}

  @Post('packet-previews')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'previewPacket',
    summary: 'What would leave for a recipient, item by item, and why the rest stays; nothing is made',
    params: INCIDENT,
    body: 'PacketDraft',
    answer: 'PacketPreview',
    refuses: NO_INCIDENT,
  })
  preview(
    @Param('id') id: string,
    @Body() body: unknown,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.packets.preview(id, readInput(readRecordInput(PacketDraftDto, body)), actor);
  }

  @Post('packets')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'makePacket',
    summary: 'Makes a packet and keeps it as it is; what overrides the profile needs a manager and a reason',
    description: 'With notes that a lawyer asked for in it, only counsel that was assigned takes it out.',
    params: INCIDENT,
    body: 'PacketDraft',
    answer: 'Packet',
    status: 201,
    once: true,
    refuses: { ...NO_INCIDENT, 409: 'The original of a file is missing or was changed.' },
  })
  async make(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    const draft = readInput(readRecordInput(PacketDraftDto, body));
    const made = await this.packets.make(id, draft, readIdempotencyKey(key), actor);
    return answerCreated(reply, `/api/incidents/${id}/packets`, made);
  }

  @Get('packets')
  @MayUse('manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'listPackets',
    summary: 'The packets that were made, who took each out, and who received it',
    params: INCIDENT,
    answer: 'PacketList',
    refuses: NO_INCIDENT,
  })
  list(@Param('id') id: string, @CurrentPerson() actor: PersonActor): Promise<object> {
    return this.packets.list(id, actor);
  }

  @Get('packets/:packet/archive')
  @MayUse('manager', 'administrator', 'counsel')
  @ApiProduces('application/zip')
  @DescribeRoute({
    operationId: 'downloadPacket',
    summary: 'The packet as one archive, for delivery by hand; that it was taken out is written down',
    params: PACKET,
    status: 200,
    refuses: {
      ...NO_PACKET,
      403: 'It holds notes that a lawyer asked for.',
      409: 'A file of it is no longer there.',
    },
  })
  async archive(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('packet') packet: string,
    @CurrentPerson() actor: PersonActor,
  ): Promise<StreamableFile> {
    const { name, bytes, size } = await this.packets.archive(id, packet, actor);
    void reply.header('cache-control', 'no-store');
    return new StreamableFile(bytes, {
      type: 'application/zip',
      length: size,
      disposition: `attachment; filename="${name}"`,
    });
  }

  @Post('packets/:packet/deliveries')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'notePacketDelivery',
    summary: 'That somebody outside received the packet, and with it the head of the log',
    params: PACKET,
    body: 'PacketDelivery',
    answer: 'Packet',
    refuses: NO_PACKET,
  })
  deliver(
    @Param('id') id: string,
    @Param('packet') packet: string,
    @Body() body: unknown,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.packets.deliver(id, packet, readInput(readRecordInput(PacketDeliveryDto, body)), actor);
  }
}
