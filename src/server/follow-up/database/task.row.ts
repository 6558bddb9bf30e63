import { Entity, Index, Unique } from 'typeorm';
import { TASK_STATES, type TaskState } from '../../../../shared/follow-up/reconcile-tasks.js';
import { TASK_OWNERS, type TaskOwner } from '../../../../shared/follow-up/task-template.js';
import {
  ChoiceColumn,
  FlagColumn,
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/** One task as it stands. Rows are never deleted; what happened to each stands in its events. */
@Entity('task')
@Unique(['incidentId', 'taskKey', 'round'])
@Index(['state', 'dueOrder', 'id'])
@Index(['assigneeId', 'state'])
export class TaskRow {
  @IdColumn() id: string;
  @ReferenceColumn('incident') incidentId: string;
  @TextColumn() taskKey: string;
  @IntegerColumn() round: number;
  /** Null for a task that somebody added. */
  @TextColumn({ nullable: true }) template: string | null;
  @IntegerColumn() taskOrder: number;
  @TextColumn() title: string;
  @TextColumn() why: string;
  @TextColumn() source: string;
  @ChoiceColumn(TASK_OWNERS) owner: TaskOwner;
  @ReferenceColumn('account', { nullable: true }) assigneeId: string | null;
  @ChoiceColumn(TASK_STATES) state: TaskState;
  @InstantColumn({ nullable: true }) dueAt: string | null;
  /** `dueAt`, and before every instant where none is known: what nobody can date comes first. */
  @TextColumn() dueOrder: string;
  @TextColumn() dueWhy: string;
  @TextColumn() evidenceAsked: string;
  @FlagColumn() escalates: boolean;
  @JsonColumn() restsOn: string[];
  @TextColumn({ nullable: true }) duty: string | null;
  @InstantColumn({ nullable: true }) acknowledgedAt: string | null;
  @TextColumn({ nullable: true }) acknowledgedBy: string | null;
  @IntegerColumn() version: number;
  @InstantColumn() createdAt: string;
  @InstantColumn() updatedAt: string;
}
