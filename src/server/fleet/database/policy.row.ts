import { Entity } from 'typeorm';
import { CentsColumn, DayColumn, JsonColumn, TextColumn } from '../../platform/database/columns.js';
import { KeptRow } from './kept.row.js';

@Entity('policy')
export class PolicyRow extends KeptRow {
  @TextColumn() number: string;
  @TextColumn() insurer: string;
  @TextColumn({ nullable: true }) covers: string | null;
  @DayColumn() firstDay: string;
  @DayColumn() lastDay: string;
  @JsonColumn() scheduledCraft: string[];
  @TextColumn({ nullable: true }) noticePhone: string | null;
  @TextColumn({ nullable: true }) noticeMail: string | null;
  @TextColumn({ nullable: true }) noticeTerms: string | null;
  @CentsColumn({ nullable: true }) deductibleCents: number | null;
}
