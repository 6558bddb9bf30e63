import { Entity, Index } from 'typeorm';
import { IdColumn, InstantColumn, TextColumn } from '../../platform/database/columns.js';

/** One try at a secret, kept only as long as it counts. */
@Entity('attempt')
@Index(['subject', 'madeAt'])
@Index(['madeAt'])
export class AttemptRow {
  @IdColumn() id: string;
  @TextColumn() subject: string;
  @InstantColumn() madeAt: string;
}
