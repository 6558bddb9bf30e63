import type { Outcome } from '../determination/determination.js';
import type { Ternary } from '../kernel/truth.js';
import type { IncidentStatus } from '../record/incident-record.js';
import { casualtyTypeSlugs } from '../vocabulary/casualty-types.js';
import { PageQueryDto } from './page-query.dto.js';
import { Needed, Value } from './record-members.js';
import { instant, line, oneOf, ternary } from './record-values.js';

const STATUSES: readonly IncidentStatus[] = ['open', 'closed'];
const OUTCOMES: readonly Outcome[] = ['required', 'undetermined', 'not-required'];

/** How the reports of an incident stand: something is not settled, or its time has passed. */
export type ReportsStanding = 'open' | 'overdue';
const STANDINGS: readonly ReportsStanding[] = ['open', 'overdue'];

/** The latest opened first, the first opened first, or the nearest time of a report that is not settled first. */
export const REGISTER_ORDERS = ['latest', 'oldest', 'due'] as const;
export type RegisterOrder = (typeof REGISTER_ORDERS)[number];

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
  /** Name of a craft, as the record has it. */
  readonly craft?: string;
  /** Name of the station to which a craft in it belongs now. */
  readonly station?: string;
  /** Slug of a casualty type that is among those of the record. */
  readonly casualty?: string;
  /** Somebody was hurt, died or is missing; nobody was, as far as everybody’s fate is known; or it is not known. */
  readonly hurt?: Ternary;
  /** Words that all must be somewhere in the record. */
  readonly q?: string;
}

/** A page of the register; the latest first, if no order is given. */
export class RegisterQueryDto extends PageQueryDto implements RegisterFilter {
  @Value(oneOf(REGISTER_ORDERS))
  order?: RegisterOrder;

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
  craft?: string;

  @Value(line)
  station?: string;

  @Value(oneOf(casualtyTypeSlugs, 'a casualty type of the vocabulary'))
  casualty?: string;

  @Value(ternary)
  hurt?: Ternary;

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
  craft?: string;

  @Value(line)
  station?: string;

  @Value(oneOf(casualtyTypeSlugs, 'a casualty type of the vocabulary'))
  casualty?: string;

  @Value(ternary)
  hurt?: Ternary;

  @Value(line)
  q?: string;
}
