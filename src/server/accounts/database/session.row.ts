import { Entity, Index, Unique } from 'typeorm';
import { IdColumn, InstantColumn, ReferenceColumn, TextColumn } from '../../platform/database/columns.js';

@Entity('session')
@Unique(['tokenHash'])
@Index(['accountId'])
export class SessionRow {
  @IdColumn() id: string;
  @ReferenceColumn('account') accountId: string;
  /** The enrolled device on which it was begun. */
  @ReferenceColumn('device', { nullable: true }) deviceId: string | null;
  @TextColumn({ hidden: true }) tokenHash: string;
  @InstantColumn() createdAt: string;
  @InstantColumn() lastUsedAt: string;
  @InstantColumn() expiresAt: string;
  @InstantColumn({ nullable: true }) endedAt: string | null;
}
