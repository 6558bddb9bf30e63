import { Entity, Unique } from 'typeorm';
import {
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

export type TaskEventKind =
  | 'added'
  | 'superseded'
  | 'revived'
  | 'due-moved'
  | 'changed'
  | 'assigned'
  | 'asked'
  | 'acknowledged'
  | 'reached'
  | 'done'
  | 'undone';

/** Something that happened to a task. Events are numbered from 1 within the task, and only ever added. */
@Entity('task_event')
@Unique(['taskId', 'sequence'])
export class TaskEventRow {
  @IdColumn() id: string;
  @ReferenceColumn('task') taskId: string;
  @IntegerColumn() sequence: number;
  @TextColumn() kind: TaskEventKind;
  @InstantColumn() at: string;
  /** Why it happened, or the evidence of completion. */
  @TextColumn({ nullable: true }) words: string | null;
  @JsonColumn({ nullable: true }) evidenceIds: string[] | null;
  @InstantColumn({ nullable: true }) dueBefore: string | null;
  @InstantColumn({ nullable: true }) dueAfter: string | null;
  /** To whom the task was given, or who was asked. */
  @TextColumn({ nullable: true }) aboutAccountId: string | null;
  @TextColumn() person: string;
  @TextColumn({ nullable: true }) accountId: string | null;
  @TextColumn({ nullable: true }) device: string | null;
}
