import { Entity, Index } from 'typeorm';
import { IdColumn, InstantColumn, ReferenceColumn } from '../../platform/database/columns.js';

/** That a person stands by what was entered in their name on a device, from one instant to the other. */
@Entity('pin_confirmation')
@Index(['deviceId', 'accountId'])
export class PinConfirmationRow {
  @IdColumn() id: string;
  @ReferenceColumn('device') deviceId: string;
  @ReferenceColumn('account') accountId: string;
  @InstantColumn() since: string;
  @InstantColumn() confirmedAt: string;
}
