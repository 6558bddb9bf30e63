import { Entity } from 'typeorm';
import { JsonColumn, NumberColumn, ReferenceColumn, TextColumn } from '../../platform/database/columns.js';
import { KeptRow } from './kept.row.js';

@Entity('place')
export class PlaceRow extends KeptRow {
  @TextColumn() name: string;
  @JsonColumn({ nullable: true }) alsoCalled: string[] | null;
  /** As it was written. */
  @TextColumn({ nullable: true }) position: string | null;
  @NumberColumn({ nullable: true }) latitude: number | null;
  @NumberColumn({ nullable: true }) longitude: number | null;
  @TextColumn({ nullable: true }) waterBody: string | null;
  @TextColumn({ nullable: true }) nearestTown: string | null;
  @TextColumn({ nullable: true }) county: string | null;
  @TextColumn({ nullable: true }) state: string | null;
  @TextColumn({ nullable: true }) directions: string | null;
  @ReferenceColumn('station', { nullable: true }) stationId: string | null;
}
