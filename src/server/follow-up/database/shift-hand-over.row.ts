import { Entity } from 'typeorm';
import type { ShiftSummary } from '../../../../shared/follow-up/summarize-shift.js';
import {
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/** What one shift told the next, and who signed for it. */
@Entity('shift_hand_over')
export class ShiftHandOverRow {
  @IdColumn() id: string;
  @JsonColumn() summary: ShiftSummary;
  @TextColumn({ nullable: true }) remarks: string | null;
  @TextColumn() builtBy: string;
  @TextColumn({ nullable: true }) outgoingId: string | null;
  @TextColumn({ nullable: true }) outgoingName: string | null;
  @InstantColumn({ nullable: true }) outgoingAt: string | null;
  @TextColumn({ nullable: true }) incomingId: string | null;
  @TextColumn({ nullable: true }) incomingName: string | null;
  @InstantColumn({ nullable: true }) incomingAt: string | null;
  @IntegerColumn() version: number;
  @InstantColumn() createdAt: string;
  @InstantColumn() updatedAt: string;
}
