import { Body, Controller, Get, Headers, HttpCode, Param, Post, Put, Query, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { MayUse } from '../platform/http/may-use.js';
import { RequestDesk } from './request-desk.js';
import { RequestsService } from './requests.service.js';

const REQUEST = { id: '4f0d6a1e-7b92-4c35-8e1f-2d3c4b5a6978' };
const NO_REQUEST = { 404: 'There is no such request for you.' };

/** Papers that ask for records or that they be kept: what came, what is due when, and what was done. */
@ApiTags('requests')
@Controller('api/requests')
export class RequestsController {
  constructor(
    private readonly desk: RequestDesk,
    private readonly requests: RequestsService,
  ) {}

  @Get()
  @MayUse('manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'listRequests',
    summary:
      'Requests: the open ones, what is due soonest or at a time that nobody knows first; or the closed',
    description: 'Counsel sees those that concern an incident which they were assigned.',
    query: { 'state?': 'open', 'kind?': 'subpoena', 'limit?': '25', 'after?': 'WyIyMDI2Il0' },
    answer: 'LegalRequestPage',
  })
  list(@Query() query: unknown, @CurrentPerson() actor: PersonActor): Promise<object> {
    return this.requests.page(query, actor);
  }

  @Post()
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'logRequest',
    summary: 'Logs a request as it came, with the incidents that it concerns as far as they are known',
    description:
      'A subpoena, a court order and a preservation letter begin a hold in each of them, unless a reason says why not. ' +
      'A due time that nobody stated is unknown, and never made up.',
    body: 'LegalRequestDraft',
    answer: 'LegalRequest',
    status: 201,
    once: true,
  })
  async log(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerCreated(reply, '/api/requests', await this.desk.log(body, key, actor));
  }

  @Get(':id')
  @MayUse('manager', 'administrator', 'counsel')
  @DescribeRoute({
    operationId: 'readRequest',
    summary: 'One request, with what was produced and objected, which incidents are held, and what to mind',
    params: REQUEST,
    answer: 'LegalRequest',
    refuses: NO_REQUEST,
  })
  async read(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.requests.read(id, actor));
  }

  @Put(':id')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'correctRequest',
    summary: 'Puts other details in the place of those that stand, which stay among the versions',
    params: REQUEST,
    body: 'LegalRequestCorrection',
    answer: 'LegalRequest',
    versioned: true,
    refuses: NO_REQUEST,
  })
  async correct(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.desk.correct({ id, ifMatch }, body, actor));
  }

  @Get(':id/versions')
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'listRequestVersions',
    summary: 'Every version of a request with who brought it about and why, the newest first',
    params: REQUEST,
    answer: 'LegalRequestVersions',
    refuses: NO_REQUEST,
  })
  versions(@Param('id') id: string, @CurrentPerson() actor: PersonActor): Promise<object> {
    return this.requests.versions(id, actor);
  }

  @Post(':id/incidents')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'addIncidentToRequest',
    summary: 'Says that a request concerns an incident, and begins the hold that the paper calls for',
    params: REQUEST,
    body: 'LegalRequestIncident',
    answer: 'LegalRequest',
    versioned: true,
    refuses: NO_REQUEST,
  })
  async addIncident(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.desk.addIncident({ id, ifMatch }, body, actor));
  }

  @Post(':id/incidents/:incident/removal')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'removeIncidentFromRequest',
    summary: 'Says that a request was found not to concern an incident; a hold that it began stands',
    params: { ...REQUEST, incident: 'd4e8b7a0-3c62-4f1d-a6a7-1b2c3d4e5f03' },
    body: 'LegalRequestRemoval',
    answer: 'LegalRequest',
    versioned: true,
    refuses: NO_REQUEST,
  })
  async removeIncident(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('incident') incident: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.desk.removeIncident({ id, ifMatch }, incident, body, actor));
  }

  @Post(':id/status')
  @HttpCode(200)
  @MayUse('manager', 'administrator')
  @DescribeRoute({
    operationId: 'setRequestStatus',
    summary: 'How a request stands: answered, in part, refused, withdrawn, or open again; it ends no hold',
    params: REQUEST,
    body: 'LegalRequestStatus',
    answer: 'LegalRequest',
    versioned: true,
    refuses: NO_REQUEST,
  })
  async setStatus(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.desk.setStatus({ id, ifMatch }, body, actor));
  }
}
