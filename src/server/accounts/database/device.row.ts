import { Entity, Unique } from 'typeorm';
import {
  IdColumn,
  InstantColumn,
  IntegerColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

@Entity('device')
@Unique(['codeHash'])
@Unique(['tokenHash'])
export class DeviceRow {
  @IdColumn() id: string;
  @TextColumn() name: string;
  @TextColumn({ nullable: true, hidden: true }) codeHash: string | null;
  @InstantColumn({ nullable: true }) codeExpiresAt: string | null;
  @TextColumn({ nullable: true, hidden: true }) tokenHash: string | null;
  @InstantColumn({ nullable: true }) enrolledAt: string | null;
  @InstantColumn({ nullable: true }) lastUsedAt: string | null;
  @InstantColumn({ nullable: true }) revokedAt: string | null;
  @ReferenceColumn('account') createdBy: string;
  @IntegerColumn() version: number;
  @InstantColumn() createdAt: string;
}
