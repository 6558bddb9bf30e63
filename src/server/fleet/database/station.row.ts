import { Entity } from 'typeorm';
import type { StationNumberDto } from '../../../../shared/wire/fleet-station.dto.js';
import { JsonColumn, NumberColumn, TextColumn } from '../../platform/database/columns.js';
import { KeptRow } from './kept.row.js';

@Entity('station')
export class StationRow extends KeptRow {
  @TextColumn() name: string;
  @TextColumn() timeZone: string;
  @TextColumn({ nullable: true }) state: string | null;
  @TextColumn({ nullable: true }) address: string | null;
  /** As it was written. */
  @TextColumn({ nullable: true }) position: string | null;
  @NumberColumn({ nullable: true }) latitude: number | null;
  @NumberColumn({ nullable: true }) longitude: number | null;
  @JsonColumn({ nullable: true }) numbers: StationNumberDto[] | null;
}
