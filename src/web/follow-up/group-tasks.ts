import { followUp as say } from '../words/follow-up.js';
import type { TaskLine } from './service-answers.js';
import type { Shown, Way } from './use-reading.js';

export interface TaskGroup {
  readonly key: string;
  readonly title: string;
  /** Id, where it is the work of one incident. */
  readonly incident?: string;
  readonly tasks: readonly TaskLine[];
}

interface Reader {
  readonly accountId: string | undefined;
  /** Epoch milliseconds. */
  readonly now: number;
}

const DAY_MS = 86_400_000;

/** Overdue by the clock of now: what was asked for a while ago may have become so since. */
export function isOverdue({ dueAt, state }: Pick<TaskLine, 'dueAt' | 'state'>, now: number): boolean {
  return state === 'open' && dueAt !== null && Date.parse(dueAt) < now;
}

export function chooseTasks(
  tasks: readonly TaskLine[],
  shown: Shown,
  { accountId, now }: Reader,
): readonly TaskLine[] {
  if (shown === 'mine') return tasks.filter(({ assignee }) => assignee !== null && assignee === accountId);
  return shown === 'overdue' ? tasks.filter((task) => isOverdue(task, now)) : tasks;
}

/** Groups without tasks are left out; within each, what is due soonest comes first, as the service sends it. */
export function groupTasks(tasks: readonly TaskLine[], way: Way, reader: Reader): TaskGroup[] {
  if (way === 'time') return byTime(tasks, reader.now);
  return way === 'person' ? byPerson(tasks, reader.accountId) : byIncident(tasks);
}

function byTime(tasks: readonly TaskLine[], now: number): TaskGroup[] {
  const left = ({ dueAt }: TaskLine): number => (dueAt === null ? Number.NaN : Date.parse(dueAt) - now);
  const spans: readonly (readonly [keyof typeof say.spans, (ms: number) => boolean])[] = [
    ['overdue', (ms) => ms < 0],
    ['unknown', (ms) => Number.isNaN(ms)],
    ['day', (ms) => ms >= 0 && ms < DAY_MS],
    ['week', (ms) => ms >= DAY_MS && ms < 7 * DAY_MS],
    ['later', (ms) => ms >= 7 * DAY_MS],
  ];
  return spans
    .map(([key, holds]) => ({ key, title: say.spans[key], tasks: tasks.filter((task) => holds(left(task))) }))
    .filter(isFilled);
}

/** One's own first, then what nobody has, which is what somebody has to take; then the others by name. */
function byPerson(tasks: readonly TaskLine[], accountId: string | undefined): TaskGroup[] {
  const people = new Map(tasks.map(({ assignee, assigneeName }) => [assignee, assigneeName ?? '']));
  const others = [...people]
    .filter(([id]) => id !== null && id !== accountId)
    .sort(([, one], [, other]) => one.localeCompare(other));
  const of = (assignee: string | null): TaskLine[] => tasks.filter((task) => task.assignee === assignee);
  return [
    { key: 'mine', title: say.yours, tasks: accountId === undefined ? [] : of(accountId) },
    ...(['shift-lead', 'manager'] as const).map((owner) => ({
      key: owner,
      title: say.free(say.owners[owner]),
      tasks: of(null).filter((task) => task.owner === owner),
    })),
    ...others.map(([id, name]) => ({ key: id ?? '', title: name, tasks: of(id) })),
  ].filter(isFilled);
}

function byIncident(tasks: readonly TaskLine[]): TaskGroup[] {
  const incidents = new Map(tasks.map(({ incident, reference }) => [incident, reference]));
  return [...incidents]
    .sort(([, one], [, other]) => other.localeCompare(one))
    .map(([incident, reference]) => ({
      key: incident,
      title: reference,
      incident,
      tasks: tasks.filter((task) => task.incident === incident),
    }));
}

const isFilled = ({ tasks }: TaskGroup): boolean => tasks.length > 0;
