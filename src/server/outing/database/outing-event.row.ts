import { Entity, Unique } from 'typeorm';
import {
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  TextColumn,
} from '../../platform/database/columns.js';

export type OutingSubject = 'outing' | 'not-back' | 'count';

/** Something that happened to an outing, a craft that is not back or a count. Events are only ever added. */
@Entity('outing_event')
@Unique(['subject', 'subjectId', 'sequence'])
export class OutingEventRow {
  @IdColumn() id: string;
  @TextColumn() subject: OutingSubject;
  @TextColumn() subjectId: string;
  @IntegerColumn() sequence: number;
  @TextColumn() kind: string;
  @InstantColumn() at: string;
  /** What was said, whole: an earlier version is found again here. */
  @JsonColumn() document: object;
  @TextColumn() person: string;
  @TextColumn({ nullable: true }) accountId: string | null;
  @TextColumn({ nullable: true }) device: string | null;
}
