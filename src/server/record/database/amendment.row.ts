import { Entity, Index } from 'typeorm';
import type { Opening } from '../../../../shared/proof/commit-field.js';
import type { FieldChange } from '../../../../shared/proof/hash-amendment.js';
import {
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/** What opens the two commitments of one change, in the order of the changes; null once it is withdrawn. */
export interface ChangeOpening {
  from: Opening | null;
  to: Opening | null;
}

/** One leaf of the log. Only its openings ever change, and only by a withdrawal. */
@Entity('amendment')
@Index(['incidentId', 'sequence'])
export class AmendmentRow {
  @IntegerColumn({ primary: true }) sequence: number;
  @ReferenceColumn('incident') incidentId: string;
  @TextColumn() section: string;
  @TextColumn({ nullable: true }) who: string | null;
  @TextColumn({ nullable: true }) device: string | null;
  @InstantColumn() madeAt: string;
  @JsonColumn() changes: FieldChange[];
  @JsonColumn() openings: ChangeOpening[];
  @TextColumn({ nullable: true }) reasonCommitment: string | null;
  @JsonColumn({ nullable: true }) reasonOpening: Opening | null;
  @TextColumn() leafHash: string;
}

/** The one row that says how far the log has grown. */
@Entity('record_log')
export class RecordLogRow {
  @IdColumn() id: string;
  @IntegerColumn() size: number;
  @TextColumn() root: string;
  @JsonColumn() nodes: string[];
  @InstantColumn({ nullable: true }) lastAt: string | null;
}

/** The last reference given out in a year. */
@Entity('reference_year')
export class ReferenceYearRow {
  @IntegerColumn({ primary: true }) year: number;
  @IntegerColumn() last: number;
}
