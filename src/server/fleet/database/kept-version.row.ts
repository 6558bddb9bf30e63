import { Entity, Unique } from 'typeorm';
import { IdColumn, IntegerColumn, JsonColumn, TextColumn } from '../../platform/database/columns.js';
import { ByRow } from './by.row.js';

/** One version of a craft, station, place or policy, as it was entered; versions are only ever added. */
@Entity('kept_version')
@Unique(['thingId', 'version'])
export class KeptVersionRow extends ByRow {
  @IdColumn() id: string;
  @TextColumn() thingId: string;
  @TextColumn() kind: string;
  @IntegerColumn() version: number;
  @JsonColumn() details: object;
}
