import { randomUUID } from 'node:crypto';
import { HouseRepository } from '../../src/server/follow-up/database/house.repository.js';
import type { TaskRow } from '../../src/server/follow-up/database/task.row.js';
import { UNDATED, TasksRepository } from '../../src/server/follow-up/database/tasks.repository.js';
import { UnitOfWork } from '../../src/server/platform/database/unit-of-work.js';
import { type Browser, create, type House, type Person } from '../accounts/house.js';

/** An incident of one touch. */
export async function openIncident(browser: Browser): Promise<{ id: string; reference: string }> {
  const answer = await create(browser, '/api/incidents', { call: { said: 'help' } }).expect(201);
  return answer.body as { id: string; reference: string };
}

/** A task that somebody added to an incident, and its id. */
export async function addTask(house: House, incidentId: string, task: Partial<TaskRow>): Promise<string> {
  const id = randomUUID();
  const unitOfWork = house.app.get(UnitOfWork);
  await unitOfWork.run(() =>
    new TasksRepository(unitOfWork).add([
      {
        id,
        incidentId,
        taskKey: id,
        round: 1,
        template: null,
        taskOrder: 1,
        title: 'Call back',
        why: 'It was promised.',
        source: 'common practice, no source',
        owner: 'shift-lead',
        assigneeId: null,
        state: 'open',
        dueAt: null,
        dueOrder: task.dueAt ?? UNDATED,
        dueWhy: 'as promised',
        evidenceAsked: 'Who was reached.',
        escalates: false,
        restsOn: [],
        duty: null,
        acknowledgedAt: null,
        acknowledgedBy: null,
        version: 1,
        createdAt: house.now(),
        updatedAt: house.now(),
        ...task,
      },
    ]),
  );
  return id;
}

/** Where somebody wants to be told. */
export function setAddress(house: House, { id }: Person, mail: string): Promise<void> {
  const unitOfWork = house.app.get(UnitOfWork);
  const address = { id, mail, phone: null, updatedAt: house.now() };
  return unitOfWork.run(() => new HouseRepository(unitOfWork).keepAddress(address));
}
