import { Entity, Unique } from 'typeorm';
import { CentsColumn, IdColumn, IntegerColumn } from '../../platform/database/columns.js';
import { ByRow } from './by.row.js';

/** An amount that the owner named; the last one counts, and the earlier ones say what counted before. */
@Entity('release_amount')
@Unique(['version'])
export class ReleaseAmountRow extends ByRow {
  @IdColumn() id: string;
  /** The first is 1; a number is given once, so that two amounts at a time become one after the other. */
  @IntegerColumn() version: number;
  @CentsColumn() amountCents: number;
}
