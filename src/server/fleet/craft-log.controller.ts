import { Body, Controller, Get, Headers, HttpCode, Param, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { CraftNotesService } from './craft-notes.service.js';
import { CRAFT_ID } from './fleet-examples.js';
import { ServiceBook } from './service-book.js';
import { StaffMay, StaffOrDeviceMay } from './who-may.js';

const params = { id: CRAFT_ID };
const PAGE = { 'limit?': '25', 'after?': 'WyIyMDI2IiwiYTEiXQ' };
const NOT_THERE = { 404: 'There is no such craft.' };
const NO_QUERY = { 422: 'The query cannot be used.' };

/** What is added to a craft and never changed: the steps of its service, and notes. */
@ApiTags('fleet')
@Controller('api/craft/:id')
export class CraftLogController {
  constructor(
    private readonly book: ServiceBook,
    private readonly notes: CraftNotesService,
  ) {}

  @Get('service')
  @StaffMay()
  @DescribeRoute({
    operationId: 'readCraftService',
    summary: 'Whether a craft is in service; what keeps it in, and what its release takes',
    params,
    answer: 'CraftService',
    refuses: NOT_THERE,
  })
  service(@Param('id') id: string, @CurrentActor() actor: Actor): Promise<object> {
    return this.book.read(id, actor);
  }

  @Get('service-steps')
  @StaffMay()
  @DescribeRoute({
    operationId: 'listServiceSteps',
    summary: 'Every step of the service of a craft, the newest first',
    params,
    query: PAGE,
    answer: 'ServiceStepPage',
    refuses: { ...NOT_THERE, ...NO_QUERY },
  })
  steps(@Param('id') id: string, @Query() query: unknown): Promise<object> {
    return this.book.page(id, query);
  }

  @Post('service-steps')
  @HttpCode(201)
  @StaffOrDeviceMay()
  @DescribeRoute({
    operationId: 'addServiceStep',
    summary: 'A craft taken out, photographed, cleared, released, held by an agency, or not to be started',
    description: 'Steps are added and never changed. A release is judged by what came of the incident.',
    params,
    body: 'ServiceStepDetails',
    answer: 'ServiceStep',
    status: 201,
    once: true,
    refuses: { ...NOT_THERE, 409: 'That may not be done as the craft stands: every reason is named.' },
  })
  take(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.book.take(id, body, key, actor);
  }

  @Get('notes')
  @StaffMay()
  @DescribeRoute({
    operationId: 'listCraftNotes',
    summary: 'Maintenance, prior-trip and inspection notes of a craft, the newest first',
    params,
    query: PAGE,
    answer: 'CraftNotePage',
    refuses: { ...NOT_THERE, ...NO_QUERY },
  })
  listNotes(@Param('id') id: string, @Query() query: unknown): Promise<object> {
    return this.notes.page(id, query);
  }

  @Post('notes')
  @HttpCode(201)
  @StaffOrDeviceMay()
  @DescribeRoute({
    operationId: 'addCraftNote',
    summary: 'A note about a craft added; it is never changed, and another one may correct it',
    params,
    body: 'CraftNoteDetails',
    answer: 'CraftNote',
    status: 201,
    once: true,
    refuses: NOT_THERE,
  })
  addNote(
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return this.notes.add(id, body, key, actor);
  }
}
