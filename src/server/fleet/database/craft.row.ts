import { Entity, Index } from 'typeorm';
import {
  FlagColumn,
  IntegerColumn,
  JsonColumn,
  NumberColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';
import { KeptRow } from './kept.row.js';

/** Two craft that go by one name would make every call a question. */
export const ONE_UNIT_NAME = 'ix_craft_unit_name';

@Entity('craft')
@Index(ONE_UNIT_NAME, ['sortKey'], { unique: true, where: '"retired_on" IS NULL' })
export class CraftRow extends KeptRow {
  @TextColumn() unitName: string;
  @TextColumn() type: string;
  @JsonColumn({ nullable: true }) colours: string[] | null;
  @TextColumn({ nullable: true }) hullNumber: string | null;
  @TextColumn({ nullable: true }) registrationNumber: string | null;
  @TextColumn({ nullable: true }) hullMaterial: string | null;
  @TextColumn({ nullable: true }) propulsion: string | null;
  @TextColumn({ nullable: true }) engineDrive: string | null;
  @TextColumn({ nullable: true }) fuel: string | null;
  @TextColumn({ nullable: true }) make: string | null;
  @TextColumn({ nullable: true }) model: string | null;
  @IntegerColumn({ nullable: true }) modelYear: number | null;
  @NumberColumn({ nullable: true }) lengthFt: number | null;
  @TextColumn({ nullable: true }) engineMake: string | null;
  @TextColumn({ nullable: true }) engineNumber: string | null;
  @NumberColumn({ nullable: true }) horsepower: number | null;
  @IntegerColumn({ nullable: true }) capacityPeople: number | null;
  @IntegerColumn({ nullable: true }) capacityLb: number | null;
  @ReferenceColumn('station', { nullable: true }) stationId: string | null;
  /** What the steps of its service come to. */
  @FlagColumn() inService: boolean;
}
