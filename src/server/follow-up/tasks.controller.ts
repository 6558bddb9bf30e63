import { Body, Controller, Get, Headers, HttpCode, Param, Post, Put, Res } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import type { FastifyReply } from 'fastify';
import { type Actor, CurrentActor, CurrentPerson, type PersonActor } from '../accounts/accounts.api.js';
import { DescribeRoute } from '../platform/http/describe-route.js';
import { answerCreated, answerVersioned } from '../platform/http/entity-tag.js';
import { MayUse } from '../platform/http/may-use.js';
import { INCIDENT_ID, TASK_ID } from './follow-up-examples.js';
import { TaskLists } from './task-lists.service.js';
import { TasksService, type TaskAddress } from './tasks.service.js';

const WORKERS = ['staff', 'manager', 'administrator'] as const;
const params = { id: INCIDENT_ID, task: TASK_ID };
const NOT_THERE = { 404: 'There is no such incident or task for you.' };
const AS_IT_STANDS = { ...NOT_THERE, 409: 'Not as the task stands: the answer says why.' };

/** Of one incident: the tasks, and what people do with them. */
@ApiTags('follow-up')
@Controller('api/incidents/:id/tasks')
export class TasksController {
  constructor(
    private readonly lists: TaskLists,
    private readonly tasks: TasksService,
  ) {}

  @Get()
  @MayUse(...WORKERS, 'counsel')
  @DescribeRoute({
    operationId: 'listTasksOfIncident',
    summary: 'All tasks of an incident in the order of the work, those done and superseded among them',
    params: { id: INCIDENT_ID },
    answer: 'TaskList',
    refuses: NOT_THERE,
  })
  list(@Param('id') id: string, @CurrentActor() actor: Actor): Promise<object> {
    return this.lists.ofIncident(id, actor);
  }

  @Post()
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'addTask',
    summary: 'A task of your own beside those that were planned',
    params: { id: INCIDENT_ID },
    body: 'OwnTask',
    answer: 'Task',
    status: 201,
    once: true,
    refuses: NOT_THERE,
  })
  async add(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerCreated(reply, `/api/incidents/${id}/tasks`, await this.tasks.add(id, body, key, actor));
  }

  @Get(':task')
  @MayUse(...WORKERS, 'counsel')
  @DescribeRoute({
    operationId: 'readTask',
    summary: 'A task with everything that happened to it',
    params,
    answer: 'TaskWithEvents',
    refuses: NOT_THERE,
  })
  async find(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param('id') id: string,
    @Param('task') task: string,
    @CurrentActor() actor: Actor,
  ): Promise<object> {
    return answerVersioned(reply, await this.lists.find(id, task, actor));
  }

  @Post(':task/completion')
  @HttpCode(200)
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'completeTask',
    summary: 'It is done, and this shows it',
    params,
    body: 'TaskCompletion',
    answer: 'Task',
    versioned: true,
    refuses: AS_IT_STANDS,
  })
  async complete(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param() at: Record<'id' | 'task', string>,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.tasks.complete(addressOf(at, ifMatch), body, actor));
  }

  @Post(':task/undoing')
  @HttpCode(200)
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'undoTask',
    summary: 'It was taken for done by mistake; that it was stays in its events',
    params,
    body: 'TaskUndoing',
    answer: 'Task',
    versioned: true,
    refuses: AS_IT_STANDS,
  })
  async undo(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param() at: Record<'id' | 'task', string>,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.tasks.undo(addressOf(at, ifMatch), body, actor));
  }

  @Put(':task/assignee')
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'assignTask',
    summary: 'Who has it now; staff takes a task, a manager gives it to anybody who works here',
    params,
    body: 'TaskAssignee',
    answer: 'Task',
    versioned: true,
    refuses: NOT_THERE,
  })
  async assign(
    @Res({ passthrough: true }) reply: FastifyReply,
    @Param() at: Record<'id' | 'task', string>,
    @Body() body: unknown,
    @Headers('if-match') ifMatch: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return answerVersioned(reply, await this.tasks.assign(addressOf(at, ifMatch), body, actor));
  }

  @Post(':task/acknowledgement')
  @HttpCode(200)
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'acknowledgeTask',
    summary: '"I have it": nobody else is asked any more',
    params,
    answer: 'Task',
    refuses: AS_IT_STANDS,
  })
  acknowledge(
    @Param() at: Record<'id' | 'task', string>,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.tasks.acknowledge(addressOf(at), actor);
  }

  @Post(':task/reached')
  @HttpCode(200)
  @MayUse(...WORKERS)
  @DescribeRoute({
    operationId: 'noteReached',
    summary: 'Somebody was reached on the telephone or radio: whom, on which number, when',
    params,
    body: 'TaskReached',
    answer: 'Task',
    once: true,
    refuses: NOT_THERE,
  })
  reached(
    @Param() at: Record<'id' | 'task', string>,
    @Body() body: unknown,
    @Headers('idempotency-key') key: string | undefined,
    @CurrentPerson() actor: PersonActor,
  ): Promise<object> {
    return this.tasks.reached(addressOf(at), body, key, actor);
  }
}

function addressOf({ id, task }: Record<'id' | 'task', string>, ifMatch?: string): TaskAddress {
  return { incidentId: id, taskId: task, ifMatch };
}
