import type { SectionName } from '../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import type { IncidentSummary } from '../../../shared/record/summarize-section.js';
import type { SectionLacks } from '../../../shared/report/list-lacks.js';

/** What the service says about the record of an incident, at the addresses beside each. */

/** `GET /api/incidents/:id` */
export interface IncidentAnswer {
  readonly reference: string;
  readonly status: 'open' | 'closed';
  readonly openedAt: string;
  readonly summary: IncidentSummary;
}

/** `GET /api/incidents/:id/sections/:section` */
export interface SectionAnswer {
  readonly section: string;
  readonly version: number;
  readonly finished: boolean;
  readonly updatedAt: string | null;
  readonly document: JsonObject;
}

/** `GET /api/incidents/:id/record`; a section that nobody has written is absent. */
export interface RecordAnswer {
  readonly reference: string;
  readonly sections: readonly SectionAnswer[];
}

/** `GET /api/incidents/:id/amendments`, the newest first */
export interface AmendmentsAnswer {
  readonly items: readonly AmendmentLine[];
}

export interface AmendmentLine {
  readonly section: string;
  readonly madeAt: string;
  /** Name of whoever wrote; empty for a device on which nobody had picked one. */
  readonly person: string;
}

/** `GET /api/incidents/:id/report-lacks` */
export interface LacksAnswer {
  readonly items: readonly SectionLacks[];
}

/** What stands in a section of a record that was read; empty where nobody has written. */
export function documentOf(record: RecordAnswer | undefined, section: SectionName): JsonObject {
  return record?.sections.find((one) => one.section === section)?.document ?? {};
}
