import { Entity, Index } from 'typeorm';
import type { JsonObject } from '../../../../shared/record/json-value.js';
import {
  DayColumn,
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/** What somebody is writing and has not finished; no part of the record. */
@Entity('section_draft')
export class DraftRow {
  @ReferenceColumn('incident', { primary: true }) incidentId: string;
  @TextColumn({ primary: true }) section: string;
  @TextColumn({ primary: true }) holder: string;
  @JsonColumn() document: JsonObject;
  /** The version of the section that it began from. */
  @IntegerColumn() version: number;
  @InstantColumn() savedAt: string;
}

/** That a lawyer asked for notes: who, on which day, and by which account where the lawyer has one. */
@Entity('counsel_request')
@Index(['incidentId'])
@Index(['counselAccount'])
export class CounselRequestRow {
  @IdColumn() id: string;
  @ReferenceColumn('incident') incidentId: string;
  @TextColumn() counsel: string;
  @TextColumn({ nullable: true }) counselAccount: string | null;
  @DayColumn() requestedOn: string;
  @TextColumn() enteredBy: string;
  @InstantColumn() enteredAt: string;
  /** Opens the commitment that the log holds. */
  @TextColumn({ nullable: true }) salt: string | null;
}

/** A note made for counsel, apart from the record and from everything that is searched or listed. */
@Entity('privileged_entry')
@Index(['requestId'])
export class PrivilegedEntryRow {
  @IdColumn() id: string;
  @ReferenceColumn('counsel_request') requestId: string;
  @TextColumn() writtenBy: string;
  @InstantColumn() writtenAt: string;
  @TextColumn() words: string;
  /** Opens the commitment that the log holds. */
  @TextColumn({ nullable: true }) salt: string | null;
}
