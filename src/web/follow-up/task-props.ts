import type { TaskLine } from './service-answers.js';

export interface TaskItemProps {
  readonly task: TaskLine;
  /** IANA zone in which its times are told. */
  readonly zone: string;
  /** Says on the page what was done, as the task itself may leave the list. */
  readonly onDone: (done: TaskDone) => void;
  /** Whether the reference stands with it: not among tasks of one incident. */
  readonly alone?: boolean;
}

/** What was done to a task just now, for the strip that tells it. */
export interface TaskDone {
  readonly words: string;
  /** The task as it stands since, where it can be taken back. */
  readonly undo?: Pick<TaskLine, 'id' | 'incident' | 'version' | 'title'>;
}
