import { Controller, Get, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { type Actor, CurrentActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { MayUse } from '../platform/http/may-use.js';
import { Escalations } from './escalations.service.js';
import { TaskLists } from './task-lists.service.js';

const WORKERS = ['staff', 'manager', 'administrator'] as const;

/** The work of all incidents together. */
@ApiTags('follow-up')
@Controller('api')
export class WorkController {
  constructor(
    private readonly lists: TaskLists,
    private readonly escalations: Escalations,
  ) {}

  @Get('tasks')
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'listTasks',
    summary: 'Tasks of all incidents, what is due soonest or at a time that nobody knows first',
    query: {
      'mine?': 'yes',
      'due?': 'overdue',
      'state?': 'open',
      'limit?': '25',
      'after?': 'WyIyMDI2IiwiYTEiXQ',
    },
    answer: 'TaskPage',
    refuses: { 422: 'The query cannot be used.' },
  })
  list(@Query() query: unknown, @CurrentActor() actor: Actor): Promise<object> {
    return this.lists.page(query, actor);
  }

  @Get('escalations')
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'listEscalations',
    summary: 'Urgent tasks that nobody has acknowledged, and who was asked',
    answer: 'Escalations',
  })
  current(): Promise<object> {
    return this.escalations.current();
  }
}
