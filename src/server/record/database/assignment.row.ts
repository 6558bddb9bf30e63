import { Entity, Index } from 'typeorm';
import { ReferenceColumn, TextColumn } from '../../platform/database/columns.js';

/** That an account of counsel reads an incident now; since when, and who else did, is in the log. */
@Entity('counsel_assignment')
@Index(['accountId'])
export class CounselAssignmentRow {
  @ReferenceColumn('incident', { primary: true }) incidentId: string;
  @TextColumn({ primary: true }) accountId: string;
}
