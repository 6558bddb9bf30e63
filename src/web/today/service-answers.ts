import type { Outcome } from '../../../shared/determination/determination.js';
import type { Standing } from '../../../shared/outing/outing.js';
import type { IncidentSummary } from '../../../shared/record/summarize-section.js';
import type { Duty } from '../../../shared/wire/accounts-roster.dto.js';

/** What the service says of the day, at the addresses beside each. */
export interface Listed<Item> {
  readonly items: readonly Item[];
}
export interface Paged<Item> extends Listed<Item> {
  readonly next: string | null;
}

/** `GET /api/clocks` */
export interface ClockLine {
  readonly incident: string;
  readonly reference: string;
  readonly status: 'open' | 'closed';
  readonly craft: readonly string[];
  readonly duty: string;
  readonly outcome: Outcome;
  readonly immediate: boolean;
  /** RFC 3339. */
  readonly dueAt: string | null;
  readonly waitUntil: string | null;
  readonly supplementDue: boolean;
}

/** `GET /api/register` */
export interface OpenIncident {
  readonly id: string;
  readonly reference: string;
  readonly openedAt: string;
  readonly summary: IncidentSummary;
  readonly tasks: { readonly open: number; readonly overdue: number };
}

/** `GET /api/outings` */
export interface WhereaboutsLine {
  readonly craftId: string;
  readonly unitName: string;
  readonly inService: boolean;
  readonly standing: Standing;
  readonly dueBackAt: string | null;
}

/** `GET /api/not-back` */
export interface NotBackLine {
  readonly id: string;
  readonly unit: string;
  readonly openedAt: string;
  readonly ended: string | null;
}

/** `GET /api/roster` */
export interface RosterLine {
  readonly id: string;
  readonly personName: string;
  readonly duty: Duty;
  readonly outOfDate: readonly { readonly title: string }[];
}

/** `GET /api/backups` */
export interface BackupLine {
  readonly madeAt: string;
  readonly folder: string;
  readonly incidents: number;
  readonly files: number;
  readonly faults: number;
}
