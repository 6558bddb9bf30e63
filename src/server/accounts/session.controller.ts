import { Body, Controller, Delete, Get, HttpCode, Post, Put, Req, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { readMembers } from '../../../shared/wire/accounts-read.js';
import { PasswordChangeDto, PinChangeDto, SignInDto } from '../../../shared/wire/accounts-session.dto.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { MayUse, OwnAccount } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { CurrentPerson, type PersonActor } from './actor.js';
import { readCookie, writeCookie } from './cookies.js';
import { DevicesService } from './devices.service.js';
import { LONGEST_SESSION_MS, SessionsService } from './sessions.service.js';
import { SignInService } from './sign-in.service.js';

const TOO_MANY = { 429: 'Too many tries: the answer says when to try again.' };

@ApiTags('accounts')
@Controller('api/session')
export class SessionController {
  constructor(
    private readonly service: SignInService,
    private readonly sessions: SessionsService,
    private readonly devices: DevicesService,
  ) {}

  @Post()
  @MayUse('anyone')
  @HttpCode(200)
  @DescribeRoute({
    operationId: 'signIn',
    summary: 'Sign in',
    description: 'The session is a cookie that no script can read.',
    body: 'SignIn',
    answer: 'SignedIn',
    refuses: { ...TOO_MANY, 401: 'Name and password do not go together.' },
  })
  async signIn(
    @Body() body: unknown,
    @Req() request: FastifyRequest,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const signIn = readInput(readMembers(SignInDto, body));
    const device = await this.devices.of(readCookie(request, 'desk_device'));
    const from = { address: request.ip, deviceId: device?.id ?? null };
    const { token, accountId, expiresAt } = await this.service.signIn(signIn, from);
    writeCookie(reply, 'desk_session', token, LONGEST_SESSION_MS);
    return { ...(await this.service.describe(accountId)), expiresAt };
  }

  @Get()
  @OwnAccount()
  @DescribeRoute({ operationId: 'whoAmI', summary: 'Who is signed in', answer: 'Session' })
  read(@CurrentPerson() person: PersonActor): Promise<object> {
    return this.service.describe(person.accountId);
  }

  @Delete()
  @OwnAccount()
  @HttpCode(204)
  @DescribeRoute({ operationId: 'signOut', summary: 'Sign out' })
  async signOut(
    @CurrentPerson() person: PersonActor,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<void> {
    await this.sessions.end(person.sessionId);
    writeCookie(reply, 'desk_session', '', 0);
  }

  @Put('password')
  @OwnAccount()
  @HttpCode(204)
  @DescribeRoute({
    operationId: 'changePassword',
    summary: 'Choose a new password; other sessions end',
    body: 'PasswordChange',
    refuses: TOO_MANY,
  })
  changePassword(@CurrentPerson() person: PersonActor, @Body() body: unknown): Promise<void> {
    return this.service.changePassword(person, readInput(readMembers(PasswordChangeDto, body)));
  }

  @Put('pin')
  @OwnAccount()
  @HttpCode(204)
  @DescribeRoute({
    operationId: 'changePin',
    summary: 'Choose a PIN for the shared devices',
    body: 'PinChange',
    refuses: TOO_MANY,
  })
  changePin(@CurrentPerson() person: PersonActor, @Body() body: unknown): Promise<void> {
    return this.service.changePin(person, readInput(readMembers(PinChangeDto, body)));
  }
}
