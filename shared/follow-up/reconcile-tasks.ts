import type { PlannedTask } from './plan-tasks.js';

export type TaskState = 'open' | 'done' | 'superseded';
export const TASK_STATES: readonly TaskState[] = ['open', 'done', 'superseded'];

/** A task that was planned before, as it stands. Work of the same key that was due again is a round of its own. */
export interface KeptTask {
  readonly key: string;
  readonly round: number;
  readonly state: TaskState;
  readonly title: string;
  readonly dueAt: string | null;
  readonly restsOn: readonly string[];
}

/** What has to happen to the kept tasks, and why, so that they are what is called for now. */
export type TaskChange =
  | { readonly what: 'added'; readonly task: PlannedTask; readonly round: number; readonly why: string }
  | { readonly what: 'superseded'; readonly key: string; readonly round: number; readonly why: string }
  | {
      readonly what: 'revived' | 'due-moved' | 'changed';
      readonly task: PlannedTask;
      readonly round: number;
      readonly why: string;
    };

/**
 * Lays a new plan over the tasks that are there. Open work that is no longer called for is superseded; work that was
 * done stays done for ever, and where what it rested on has grown, a new round of it is added that says why.
 * @example reconcileTasks([], planned).map(({ what }) => what) // ['added', 'added', …]
 */
export function reconcileTasks(existing: readonly KeptTask[], planned: readonly PlannedTask[]): TaskChange[] {
  const latest = new Map<string, KeptTask>();
  for (const task of existing) {
    if (task.round >= (latest.get(task.key)?.round ?? 0)) latest.set(task.key, task);
  }
  const wanted = new Set(planned.map(({ key }) => key));
  return [
    ...planned.flatMap((task) => changeOf(task, latest.get(task.key))),
    ...[...latest.values()]
      .filter(({ key, state }) => state === 'open' && !wanted.has(key))
      .map(({ key, round }) => ({ what: 'superseded' as const, key, round, why: NO_LONGER })),
  ];
}

const NO_LONGER = 'The facts as they stand now no longer call for it.';

function changeOf(task: PlannedTask, kept: KeptTask | undefined): TaskChange[] {
  if (kept === undefined) return [{ what: 'added', task, round: 1, why: 'The facts call for it.' }];
  const { round } = kept;
  switch (kept.state) {
    case 'done': {
      const grown = task.restsOn.filter((part) => !kept.restsOn.includes(part));
      if (grown.length === 0) return [];
      return [
        {
          what: 'added',
          task,
          round: round + 1,
          why: `Due again; new since it was done: ${grown.join(', ')}.`,
        },
      ];
    }
    case 'superseded':
      return [{ what: 'revived', task, round, why: 'The facts call for it again.' }];
    case 'open': {
      if (!sameInstant(task.dueAt, kept.dueAt)) return [{ what: 'due-moved', task, round, why: task.dueWhy }];
      const isSame = task.title === kept.title && task.restsOn.join('\n') === kept.restsOn.join('\n');
      return isSame ? [] : [{ what: 'changed', task, round, why: 'What it rests on has changed.' }];
    }
  }
}

function sameInstant(one: string | null, other: string | null): boolean {
  if (one === null || other === null) return one === other;
  return Date.parse(one) === Date.parse(other);
}
