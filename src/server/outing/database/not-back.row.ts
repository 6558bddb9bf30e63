import { Entity, Index } from 'typeorm';
import type { OverdueEnd } from '../../../../shared/call/call.js';
import type { RungStamp, SearchSheet } from '../../../../shared/outing/not-back.js';
import {
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/** A craft that is not back, how it was looked for, and how that turned out. */
@Entity('not_back')
@Index(['craftId', 'openedAt'])
@Index(['ended'])
@Index(['incidentId'])
export class NotBackRow {
  @IdColumn() id: string;
  @ReferenceColumn('craft') craftId: string;
  @ReferenceColumn('outing', { nullable: true }) outingId: string | null;
  @InstantColumn() openedAt: string;
  @TextColumn() openedBy: string;
  @JsonColumn() sheet: SearchSheet;
  /** Rungs that were climbed and not undone; every stamp and its undoing stays in the events. */
  @JsonColumn() climbed: RungStamp[];
  @TextColumn({ nullable: true }) ended: OverdueEnd | null;
  @InstantColumn({ nullable: true }) endedAt: string | null;
  @TextColumn({ nullable: true }) endedBy: string | null;
  @TextColumn({ nullable: true }) endedHow: string | null;
  /** Why somebody said that it is no incident, and who. */
  @TextColumn({ nullable: true }) notIncident: string | null;
  @TextColumn({ nullable: true }) notIncidentBy: string | null;
  @ReferenceColumn('incident', { nullable: true }) incidentId: string | null;
  @IntegerColumn() version: number;
  @InstantColumn() updatedAt: string;
}
