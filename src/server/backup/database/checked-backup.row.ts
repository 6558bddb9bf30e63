import { Entity, Index } from 'typeorm';
import { IdColumn, InstantColumn, IntegerColumn, TextColumn } from '../../platform/database/columns.js';

/** A copy of the desk that was made and held against itself. */
@Entity('checked_backup')
@Index(['madeAt'])
export class CheckedBackupRow {
  @IdColumn() id: string;
  @InstantColumn() madeAt: string;
  @TextColumn() folder: string;
  @IntegerColumn() incidents: number;
  @IntegerColumn() amendments: number;
  @IntegerColumn() files: number;
  @IntegerColumn() faults: number;
}
