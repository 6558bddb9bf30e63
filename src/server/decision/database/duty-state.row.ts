import { Entity, Index, Unique } from 'typeorm';
import type { DecisionKind } from '../../../../shared/decision/decision.js';
import type { Outcome } from '../../../../shared/determination/determination.js';
import {
  FlagColumn,
  IdColumn,
  InstantColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/** How one report of an incident stands, for lists. It follows from the determinations and the record. */
@Entity('duty_state')
@Unique(['incidentId', 'duty', 'vessel'])
@Index(['settled', 'dueOrder', 'id'])
export class DutyStateRow {
  @IdColumn() id: string;
  @ReferenceColumn('incident') incidentId: string;
  /** Such as `us-tx/accident-report`. */
  @TextColumn() duty: string;
  /** Empty while no craft is named. */
  @TextColumn() vessel: string;
  @TextColumn() outcome: Outcome;
  @FlagColumn() immediate: boolean;
  /** The earliest clock that it can have. */
  @InstantColumn({ nullable: true }) dueAt: string | null;
  @InstantColumn({ nullable: true }) overdueAfter: string | null;
  /** What stands signed. */
  @TextColumn({ nullable: true }) decision: DecisionKind | null;
  @InstantColumn({ nullable: true }) waitUntil: string | null;
  @FlagColumn() filed: boolean;
  @FlagColumn() supplementDue: boolean;
  /** Filed as it stands, or signed that nothing is due. */
  @FlagColumn() settled: boolean;
  /** `dueAt`, or a text behind every instant where it has none. */
  @TextColumn() dueOrder: string;
  /** Since when outcome, deadline, reporter, authority and law are as they are. */
  @InstantColumn() changedAt: string;
  /** Since when the record shows this clock. */
  @InstantColumn() clockSince: string;
}

export const DECISION_ROWS = [DutyStateRow];
