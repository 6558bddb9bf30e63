import { AmendmentRow, RecordLogRow, ReferenceYearRow } from './amendment.row.js';
import { CounselAssignmentRow } from './assignment.row.js';
import { CounselRequestRow, DraftRow, PrivilegedEntryRow } from './aside.row.js';
import { IncidentRow, SectionRow } from './incident.row.js';

/** Every row of this module. */
export const RECORD_ROWS = [
  IncidentRow,
  SectionRow,
  AmendmentRow,
  RecordLogRow,
  ReferenceYearRow,
  DraftRow,
  CounselAssignmentRow,
  CounselRequestRow,
  PrivilegedEntryRow,
];
