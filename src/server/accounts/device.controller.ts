import { Body, Controller, Get, HttpCode, Post, Query, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { DeviceEnrolmentDto, PinConfirmationDto } from '../../../shared/wire/accounts-device.dto.js';
import { readMembers } from '../../../shared/wire/accounts-read.js';
import { DayQueryDto } from '../../../shared/wire/accounts-roster.dto.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { MayUse, OwnDevice } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { CurrentDevice, type DeviceActor } from './actor.js';
import { writeCookie } from './cookies.js';
import { DevicesService } from './devices.service.js';
import { PickList } from './pick-list.js';
import { PinConfirmations } from './pin-confirmations.service.js';

/** Browsers keep no cookie for longer (RFC 6265bis, section 5.5); the device is then enrolled anew. */
const COOKIE_LIFE_MS = 400 * 24 * 60 * 60_000;

/** What a device sees of itself. */
@ApiTags('accounts')
@Controller('api/device')
export class DeviceController {
  constructor(
    private readonly service: DevicesService,
    private readonly pickList: PickList,
    private readonly confirmations: PinConfirmations,
  ) {}

  @Post()
  @MayUse('anyone')
  @HttpCode(200)
  @DescribeRoute({
    operationId: 'enrolDevice',
    summary: 'Enrol this device with a code',
    body: 'DeviceEnrolment',
    answer: 'Device',
    refuses: { 401: 'The code was used, has expired or never was.', 429: 'Too many tries.' },
  })
  async enrol(
    @Body() body: unknown,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const { code } = readInput(readMembers(DeviceEnrolmentDto, body));
    const { token, device } = await this.service.enrol(code, request.ip);
    writeCookie(reply, 'desk_device', token, COOKIE_LIFE_MS);
    return device;
  }

  @Get()
  @OwnDevice()
  @DescribeRoute({
    operationId: 'whichDevice',
    summary: 'Which device this is, and whose name was picked',
    description: 'The header Desk-Person names the account that was picked.',
    answer: 'DeviceSelf',
  })
  read(@CurrentDevice() device: DeviceActor): object {
    const { deviceId: id, deviceName: name, accountId = null, personName } = device;
    return { id, name, accountId, personName };
  }

  @Get('people')
  @OwnDevice()
  @DescribeRoute({
    operationId: 'listPeopleOnDuty',
    summary: 'The names to pick from: who is on',
    query: { day: '2026-06-13' },
    answer: 'PeopleOnDuty',
    refuses: { 422: 'The day is not today, yesterday or tomorrow.' },
  })
  people(@Query() query: unknown): Promise<object> {
    return this.pickList.of(readInput(readMembers(DayQueryDto, query), 'query').day);
  }

  @Post('confirmations')
  @OwnDevice()
  @DescribeRoute({
    operationId: 'confirmByPin',
    summary: 'Stand by what was entered in your name on this device',
    body: 'PinConfirmation',
    answer: 'PinConfirmed',
    status: 201,
    refuses: { 429: 'Too many tries: the answer says when to try again.' },
  })
  confirm(@CurrentDevice() device: DeviceActor, @Body() body: unknown): Promise<object> {
    return this.confirmations.confirm(readInput(readMembers(PinConfirmationDto, body)), device);
  }
}
