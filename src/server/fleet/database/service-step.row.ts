import { Entity, Index, Unique } from 'typeorm';
import type { ServiceStep } from '../../../../shared/record/service-step.js';
import {
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';
import { ByRow } from './by.row.js';

/** One step of a craft's service. Steps are numbered from 1 without a gap, and only ever added. */
@Entity('service_step')
@Unique(['craftId', 'sequence'])
@Index(['incidentId'])
export class ServiceStepRow extends ByRow {
  @IdColumn() id: string;
  @ReferenceColumn('craft') craftId: string;
  @IntegerColumn() sequence: number;
  @TextColumn() kind: ServiceStep['kind'];
  @TextColumn({ nullable: true }) incidentId: string | null;
  /** When it was so; `recordedAt` is when it was written down. */
  @InstantColumn() at: string;
  @JsonColumn() step: ServiceStep;
}
