import type { Outcome } from '../determination/determination.js';
import type { IncidentStatus } from '../record/incident-record.js';
import { PageQueryDto } from './page-query.dto.js';
import { Needed, Value } from './record-members.js';
import { instant, line, oneOf } from './record-values.js';

const STATUSES: readonly IncidentStatus[] = ['open', 'closed'];
const OUTCOMES: readonly Outcome[] = ['required', 'undetermined', 'not-required'];

/** How the reports of an incident stand: something is not settled, or its time has passed. */
export type ReportsStanding = 'open' | 'overdue';
const STANDINGS: readonly ReportsStanding[] = ['open', 'overdue'];

export const EXPORT_FORMATS = ['xlsx', 'csv'] as const;
export const EXPORT_SUBJECTS = ['incidents', 'duties', 'tasks', 'filings'] as const;
export type ExportFormat = (typeof EXPORT_FORMATS)[number];
export type ExportSubject = (typeof EXPORT_SUBJECTS)[number];

/** Which incidents of the register are asked for. */
export interface RegisterFilter {
  readonly status?: IncidentStatus;
  /** Opened at this instant or later (RFC 3339). */
  readonly openedFrom?: string;
  /** Opened before this instant (RFC 3339). */
  readonly openedUntil?: string;
  /** Some duty has this outcome. */
  readonly outcome?: Outcome;
  readonly reports?: ReportsStanding;
  /** Words that all must be somewhere in the record. */
  readonly q?: string;
}

/** A page of the register; latest first. */
export class RegisterQueryDto extends PageQueryDto implements RegisterFilter {
  @Value(oneOf(STATUSES))
  status?: IncidentStatus;

  @Value(instant)
  openedFrom?: string;

  @Value(instant)
  openedUntil?: string;

  @Value(oneOf(OUTCOMES))
  outcome?: Outcome;

  @Value(oneOf(STANDINGS))
  reports?: ReportsStanding;

  @Value(line)
  q?: string;
}

/** An export of the register: a workbook of all subjects, or one subject as comma-separated values. */
export class RegisterExportDto implements RegisterFilter {
  @Needed(oneOf(EXPORT_FORMATS))
  format: ExportFormat;

  /** Of a csv file; incidents, if not given. */
  @Value(oneOf(EXPORT_SUBJECTS))
  subject?: ExportSubject;

  @Value(oneOf(STATUSES))
  status?: IncidentStatus;

  @Value(instant)
  openedFrom?: string;

  @Value(instant)
  openedUntil?: string;

  @Value(oneOf(OUTCOMES))
  outcome?: Outcome;

  @Value(oneOf(STANDINGS))
  reports?: ReportsStanding;

  @Value(line)
  q?: string;
}
