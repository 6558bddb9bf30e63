import { Entity, Index, Unique } from 'typeorm';
import { IdColumn, InstantColumn, ReferenceColumn, TextColumn } from '../../platform/database/columns.js';

/** The secret address of a person's calendar. Of the secret only a hash is kept. */
@Entity('calendar_feed')
@Unique(['secretHash'])
@Index(['accountId'])
export class CalendarFeedRow {
  @IdColumn() id: string;
  @ReferenceColumn('account') accountId: string;
  @TextColumn({ hidden: true }) secretHash: string;
  @InstantColumn() createdAt: string;
  @InstantColumn({ nullable: true }) revokedAt: string | null;
}
