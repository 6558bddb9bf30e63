import { Entity } from 'typeorm';
import { IdColumn, InstantColumn, TextColumn } from '../../platform/database/columns.js';

/** Where somebody wants to be told of their tasks. The id is that of the account. */
@Entity('notice_address')
export class NoticeAddressRow {
  @IdColumn() id: string;
  @TextColumn({ nullable: true }) mail: string | null;
  @TextColumn({ nullable: true }) phone: string | null;
  @InstantColumn() updatedAt: string;
}
