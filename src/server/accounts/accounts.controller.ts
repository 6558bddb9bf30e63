import { Body, Controller, Get, Headers, Param, Patch, Post, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { AccountChangeDto, AccountCreationDto } from '../../../shared/wire/accounts-account.dto.js';
import { readMembers } from '../../../shared/wire/accounts-read.js';
import { readPageQuery } from '../../../shared/wire/page-query.dto.js';
import { pageRequest } from '../platform/http/cursor.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { AccountsService } from './accounts.service.js';

const ID = '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10';
const NOT_THERE = { 404: 'There is no such account.' };
const TAKEN = { 409: 'Another account has that sign-in name, or nobody would be left to administer.' };

@ApiTags('accounts')
@Controller('api/accounts')
export class AccountsController {
  constructor(private readonly service: AccountsService) {}

  @Get()
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'listAccounts',
    summary: 'Everyone who has an account, by sign-in name',
    query: { 'limit?': '25', 'after?': 'WyJhbmEiLCJhMSJd' },
    answer: 'AccountPage',
    refuses: { 422: 'The query cannot be used.' },
  })
  list(@Query() query: unknown): Promise<object> {
    return this.service.list(pageRequest(readInput(readPageQuery(query), 'query')));
  }

  @Get(':id')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'readAccount',
    summary: 'One account',
    params: { id: ID },
    answer: 'Account',
    refuses: NOT_THERE,
  })
  async read(@Param('id') id: string, @Res({ passthrough: true }) reply: FastifyReply): Promise<object> {
    return answerVersioned(reply, await this.service.read(id));
  }

  @Post()
  @MayUse('administrator')
  @DescribeRoute({
    operationId: 'createAccount',
    summary: 'Make an account, with a one-time password that is shown once',
    body: 'AccountCreation',
    answer: 'NewAccount',
    status: 201,
    once: true,
    refuses: TAKEN,
  })
  async create(
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const draft = readInput(readMembers(AccountCreationDto, body));
    return answerCreated(reply, '/api/accounts', await this.service.create(draft, readIdempotencyKey(key)));
  }

  @Patch(':id')
  @MayUse('administrator')
  @DescribeRoute({
    operationId: 'changeAccount',
    summary: 'Change name, role or address, or close an account',
    description: 'A closed account is signed out everywhere and keeps its place in the record.',
    params: { id: ID },
    body: 'AccountChange',
    answer: 'Account',
    versioned: true,
    refuses: { ...NOT_THERE, ...TAKEN },
  })
  async change(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const change = readInput(readMembers(AccountChangeDto, body));
    return answerVersioned(reply, await this.service.change(id, change, ifMatch));
  }

  @Post(':id/password-reset')
  @MayUse('administrator')
  @DescribeRoute({
    operationId: 'resetPassword',
    summary: 'Give a new one-time password, shown once; the person is signed out everywhere',
    params: { id: ID },
    answer: 'NewAccount',
    status: 201,
    refuses: NOT_THERE,
  })
  resetPassword(@Param('id') id: string): Promise<object> {
    return this.service.resetPassword(id);
  }
}
