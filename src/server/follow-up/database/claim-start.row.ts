import { Entity, Index } from 'typeorm';
import { IdColumn, InstantColumn, ReferenceColumn } from '../../platform/database/columns.js';

/** A moment that was taken for the first written notice of a claim. The earliest counts, whatever is said later. */
@Entity('claim_start')
@Index(['incidentId'])
export class ClaimStartRow {
  @IdColumn() id: string;
  @ReferenceColumn('incident') incidentId: string;
  @InstantColumn() receivedAt: string;
  @InstantColumn() recordedAt: string;
}
