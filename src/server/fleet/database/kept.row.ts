import { DayColumn, IdColumn, IntegerColumn, TextColumn } from '../../platform/database/columns.js';

/** What craft, stations, places and policies have in common. */
export abstract class KeptRow {
  @IdColumn() id: string;
  @IntegerColumn() version: number;
  /** The name as lists are sorted by it and as two names count for the same. */
  @TextColumn() sortKey: string;
  @DayColumn({ nullable: true }) retiredOn: string | null;
}
