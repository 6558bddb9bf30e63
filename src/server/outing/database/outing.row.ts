import { Entity, Index } from 'typeorm';
import type { OutingDetails } from '../../../../shared/outing/outing.js';
import {
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
} from '../../platform/database/columns.js';

/** A craft that went out, and when it came back. */
@Entity('outing')
@Index(['craftId', 'createdAt'])
@Index(['backAt'])
export class OutingRow {
  @IdColumn() id: string;
  @ReferenceColumn('craft') craftId: string;
  @JsonColumn() details: OutingDetails;
  @InstantColumn({ nullable: true }) outAt: string | null;
  @InstantColumn({ nullable: true }) dueBackAt: string | null;
  @InstantColumn({ nullable: true }) backAt: string | null;
  @IntegerColumn() version: number;
  @InstantColumn() createdAt: string;
  @InstantColumn() updatedAt: string;
}
