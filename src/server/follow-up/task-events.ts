import { randomUUID } from 'node:crypto';
import type { Actor } from '../accounts/accounts.api.js';
import type { TaskEventRow } from './database/task-event.row.js';

/** What happened, without who and when. */
export type TaskHappening = Pick<TaskEventRow, 'kind'> &
  Partial<Pick<TaskEventRow, 'words' | 'evidenceIds' | 'dueBefore' | 'dueAfter' | 'aboutAccountId'>>;

/** An event of a task as a row; a service that acts by itself says so as the person. */
export function taskEvent(
  taskId: string,
  sequence: number,
  { kind, words, evidenceIds, dueBefore, dueAfter, aboutAccountId }: TaskHappening,
  actor: Actor,
  at: string,
): TaskEventRow {
  return {
    id: randomUUID(),
    taskId,
    sequence,
    kind,
    at,
    words: words ?? null,
    evidenceIds: evidenceIds ?? null,
    dueBefore: dueBefore ?? null,
    dueAfter: dueAfter ?? null,
    aboutAccountId: aboutAccountId ?? null,
    person: actor.personName,
    accountId: actor.accountId ?? null,
    device: actor.deviceName ?? null,
  };
}
