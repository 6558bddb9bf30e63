import { Entity, Index } from 'typeorm';
import type { Duty } from '../../../../shared/wire/accounts-roster.dto.js';
import {
  DayColumn,
  IdColumn,
  InstantColumn,
  IntegerColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

@Entity('roster_entry')
@Index(['lastDay'])
@Index(['accountId'])
export class RosterEntryRow {
  @IdColumn() id: string;
  @ReferenceColumn('account') accountId: string;
  @TextColumn() duty: Duty;
  @DayColumn() firstDay: string;
  @DayColumn() lastDay: string;
  @ReferenceColumn('account') writtenBy: string;
  @IntegerColumn() version: number;
  @InstantColumn() createdAt: string;
  @InstantColumn() updatedAt: string;
  @InstantColumn({ nullable: true }) withdrawnAt: string | null;
}
