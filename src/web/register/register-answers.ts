import type { Outcome } from '../../../shared/determination/determination.js';
import type { IncidentStatus } from '../../../shared/record/incident-record.js';
import type { IncidentSummary } from '../../../shared/record/summarize-section.js';

/** What the service says of the register, at the addresses beside each. */

export interface LineDuty {
  readonly outcome: Outcome;
  /** RFC 3339; of one that cannot be told yet, when it would be due. */
  readonly dueAt: string | null;
  readonly decision: string | null;
  readonly filed: boolean;
  readonly supplementDue: boolean;
  readonly settled: boolean;
  readonly overdue: boolean;
}

/** An incident of `GET /api/register`. */
export interface RegisterLine {
  readonly id: string;
  readonly reference: string;
  readonly status: IncidentStatus;
  readonly openedAt: string;
  readonly summary: IncidentSummary;
  readonly duties: readonly LineDuty[];
  readonly tasks: { readonly open: number; readonly overdue: number };
}

export interface RegisterPageAnswer {
  readonly items: readonly RegisterLine[];
  readonly next: string | null;
}

/** `GET /api/register/count` */
export interface CountAnswer {
  readonly count: number;
  readonly timeZone: string;
}

/** `GET /api/register-exports/:id` */
export interface ExportAnswer {
  readonly id: string;
  readonly state: 'running' | 'ready' | 'failed';
  readonly done: number;
  readonly total: number;
  readonly advice: string | null;
}
