import type { Outcome } from '../../../shared/determination/determination.js';
import type { IncidentStatus } from '../../../shared/record/incident-record.js';
import type { IncidentSummary } from '../../../shared/record/summarize-section.js';

/** One report of an incident as the register shows it. */
export interface RegisterDuty {
  readonly duty: string;
  /** Empty while no craft is named. */
  readonly vessel: string;
  readonly outcome: Outcome;
  readonly dueAt: string | null;
  readonly decision: string | null;
  readonly waitUntil: string | null;
  readonly filed: boolean;
  readonly supplementDue: boolean;
  readonly settled: boolean;
  readonly overdue: boolean;
}

/** One line of the register. */
export interface RegisterLine {
  readonly id: string;
  readonly reference: string;
  readonly status: IncidentStatus;
  readonly openedAt: string;
  readonly updatedAt: string;
  readonly version: number;
  readonly summary: IncidentSummary;
  readonly duties: readonly RegisterDuty[];
  readonly tasks: { readonly open: number; readonly overdue: number; readonly done: number };
}

/** A report that is not settled, over all incidents. */
export interface RegisterClock extends Omit<RegisterDuty, 'filed' | 'settled'> {
  /** To be given without delay. */
  readonly immediate: boolean;
  readonly incident: string;
  readonly reference: string;
  readonly status: IncidentStatus;
  /** Names of the craft of the incident. */
  readonly craft: readonly string[];
}

export interface RegisterCount {
  readonly count: number;
  /** IANA zone of the business. */
  readonly timeZone: string;
}

export interface RegisterTask {
  readonly incidentId: string;
  readonly title: string;
  readonly owner: string;
  readonly assignee: string | null;
  readonly state: string;
  readonly dueAt: string | null;
  readonly source: string;
  readonly updatedAt: string;
}
