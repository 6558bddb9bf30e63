import { Entity, Index } from 'typeorm';
import {
  DayColumn,
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/** What somebody decided about something whose time was over. Only ever added. */
@Entity('retention_decision')
@Index(['kind', 'incidentId'])
@Index(['at', 'id'])
export class RetentionDecisionRow {
  @IdColumn() id: string;
  @TextColumn() kind: string;
  @ReferenceColumn('incident', { nullable: true }) incidentId: string | null;
  /** `2024-06`, for outings and mails. */
  @TextColumn({ nullable: true }) month: string | null;
  @TextColumn() decision: 'delete' | 'keep';
  @TextColumn() reason: string;
  @DayColumn({ nullable: true }) keepUntil: string | null;
  @TextColumn({ nullable: true }) counsel: string | null;
  @DayColumn({ nullable: true }) directedOn: string | null;
  /** How much of what went. */
  @JsonColumn() gone: Record<string, number>;
  @TextColumn() person: string;
  @TextColumn() role: string;
  @TextColumn() accountId: string;
  @InstantColumn() at: string;
}

/** A period that the business lengthened. The latest of a period counts; rows are only ever added. */
@Entity('retention_choice')
@Index(['period'])
export class RetentionChoiceRow {
  @IdColumn() id: string;
  @TextColumn() period: string;
  @IntegerColumn() months: number;
  @TextColumn() reason: string;
  @TextColumn() person: string;
  @TextColumn() role: string;
  @TextColumn() accountId: string;
  @InstantColumn() at: string;
  /** From 1 within the period. */
  @IntegerColumn() version: number;
}

export const RETENTION_ROWS = [RetentionDecisionRow, RetentionChoiceRow];
