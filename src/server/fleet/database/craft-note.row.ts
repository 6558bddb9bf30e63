import { Entity, Index } from 'typeorm';
import {
  ChoiceColumn,
  DayColumn,
  IdColumn,
  NumberColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';
import { NOTE_SUBJECTS } from '../../../../shared/wire/fleet-requests.dto.js';
import { ByRow } from './by.row.js';

/** Notes are only ever added. */
@Entity('craft_note')
@Index(['craftId', 'recordedAt'])
export class CraftNoteRow extends ByRow {
  @IdColumn() id: string;
  @ReferenceColumn('craft') craftId: string;
  @ChoiceColumn(NOTE_SUBJECTS) about: (typeof NOTE_SUBJECTS)[number];
  @TextColumn() text: string;
  @DayColumn({ nullable: true }) day: string | null;
  @NumberColumn({ nullable: true }) hourMeter: number | null;
}
