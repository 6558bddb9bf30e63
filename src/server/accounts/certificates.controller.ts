import {
  Body,
  Controller,
  Delete,
  Get,
  Headers,
  HttpCode,
  Param,
  Patch,
  Post,
  Query,
  Res,
} from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { readMembers } from '../../../shared/wire/accounts-read.js';
import {
  CertificateChangeDto,
  CertificateDto,
  CertificatesQueryDto,
  findDayOrderFaults,
} from '../../../shared/wire/accounts-roster.dto.js';
import { readPageQuery } from '../../../shared/wire/page-query.dto.js';
import { pageRequest } from '../platform/http/cursor.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { readIdempotencyKey } from '../platform/http/idempotency-key.js';
import { MayUse } from '../platform/http/may-use.js';
import { readInput } from '../platform/http/read-input.js';
import { CurrentPerson, type PersonActor } from './actor.js';
import { CertificatesService } from './certificates.service.js';

const ID = '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10';
const NOT_THERE = { 404: 'There is no such certificate.' };

@ApiTags('accounts')
@Controller('api/certificates')
export class CertificatesController {
  constructor(private readonly service: CertificatesService) {}

  @Get()
  @MayUse('staff', 'manager', 'administrator')
  @DescribeRoute({
    operationId: 'listCertificates',
    summary: 'Certificates and how they stand on a day; what ended or ends first comes first',
    query: { day: '2026-06-13', 'limit?': '25', 'after?': 'WyJhbmEiLCJhMSJd' },
    answer: 'CertificatePage',
    refuses: { 422: 'The query cannot be used.' },
  })
  list(@Query() query: unknown): Promise<object> {
    const asked = readInput(readPageQuery(query, CertificatesQueryDto), 'query');
    return this.service.list(asked.day, pageRequest(asked));
  }

  @Post()
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'createCertificate',
    summary: 'Note a certificate of somebody',
    body: 'CertificateCreation',
    answer: 'Certificate',
    status: 201,
    once: true,
  })
  async create(
    @Body() body: unknown,
    @CurrentPerson() person: PersonActor,
    @Headers('idempotency-key') key: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const draft = readInput(
      readMembers(CertificateDto, body, ({ issuedOn, expiresOn }) =>
        findDayOrderFaults(issuedOn, expiresOn, '/expiresOn'),
      ),
    );
    return answerCreated(
      reply,
      '/api/certificates',
      await this.service.create(draft, readIdempotencyKey(key), person),
    );
  }

  @Patch(':id')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'changeCertificate',
    summary: 'Change what a certificate says',
    params: { id: ID },
    body: 'CertificateChange',
    answer: 'Certificate',
    versioned: true,
    refuses: NOT_THERE,
  })
  async change(
    @Param('id') id: string,
    @Body() body: unknown,
    @CurrentPerson() person: PersonActor,
    @Headers('if-match') ifMatch: string | undefined,
    @Res({ passthrough: true }) reply: FastifyReply,
  ): Promise<object> {
    const change = readInput(readMembers(CertificateChangeDto, body));
    return answerVersioned(reply, await this.service.change(id, change, ifMatch, person));
  }

  @Delete(':id')
  @MayUse('manager', 'administrator')
  @HttpCode(204)
  @DescribeRoute({
    operationId: 'withdrawCertificate',
    summary: 'Take away a certificate that was entered by mistake',
    params: { id: ID },
    versioned: true,
    refuses: NOT_THERE,
  })
  withdraw(
    @Param('id') id: string,
    @CurrentPerson() person: PersonActor,
    @Headers('if-match') ifMatch: string | undefined,
  ): Promise<void> {
    return this.service.withdraw(id, ifMatch, person);
  }
}
