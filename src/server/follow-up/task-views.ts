import type { TaskEventRow } from './database/task-event.row.js';
import type { TaskRow } from './database/task.row.js';

/** A task as it is shown. */
export type TaskView = Omit<
  TaskRow,
  'incidentId' | 'assigneeId' | 'taskKey' | 'taskOrder' | 'dueOrder' | 'createdAt' | 'updatedAt'
> & {
  readonly incident: string;
  readonly assignee: string | null;
  readonly key: string;
  /** Overdue now, open, and with a time that is known. */
  readonly overdue: boolean;
};

/** A task in a list, with the words by which people know its incident and who has it. */
export type TaskLine = TaskView & {
  readonly reference: string;
  readonly assigneeName: string | null;
};

export type TaskEventView = Omit<TaskEventRow, 'id' | 'taskId'>;

export function viewTask(row: TaskRow, now: string): TaskView {
  const { id, round, template, title, why, source, owner, state, dueAt, dueWhy, evidenceAsked } = row;
  const { escalates, restsOn, duty, acknowledgedAt, acknowledgedBy, version } = row;
  const overdue = state === 'open' && dueAt !== null && dueAt < now;
  return {
    id,
    incident: row.incidentId,
    key: row.taskKey,
    round,
    template,
    title,
    why,
    source,
    owner,
    assignee: row.assigneeId,
    state,
    dueAt,
    dueWhy,
    overdue,
    evidenceAsked,
    escalates,
    restsOn,
    duty,
    acknowledgedAt,
    acknowledgedBy,
    version,
  };
}

export function viewEvent(row: TaskEventRow): TaskEventView {
  const { sequence, kind, at, words, evidenceIds, dueBefore, dueAfter, aboutAccountId } = row;
  const { person, accountId, device } = row;
  return {
    sequence,
    kind,
    at,
    words,
    evidenceIds,
    dueBefore,
    dueAfter,
    aboutAccountId,
    person,
    accountId,
    device,
  };
}
