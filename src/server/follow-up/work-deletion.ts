import { Injectable } from '@nestjs/common';
import { TasksRepository } from './database/tasks.repository.js';

const DELETED = 'deleted';

/** Takes the words of people out of the tasks of an incident; that each was done, when and by whom, stays. */
@Injectable()
export class WorkDeletion {
  constructor(private readonly tasks: TasksRepository) {}

  /** Within a unit of work. */
  async words(incidentId: string): Promise<void> {
    for (const { id, template } of await this.tasks.ofIncident(incidentId)) {
      await this.tasks.dropWords(id);
      // What a template says of the duty holds no word of the record; what somebody wrote may.
      if (template !== null) continue;
      await this.tasks.change({ id, title: DELETED, why: '', source: '', dueWhy: '', evidenceAsked: '' });
    }
  }
}
