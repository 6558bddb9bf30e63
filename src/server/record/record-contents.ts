import { Injectable } from '@nestjs/common';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import { DraftsRepository } from './database/drafts.repository.js';
import type { SectionRow } from './database/incident.row.js';
import { IncidentsRepository } from './database/incidents.repository.js';
import { PrivilegedRepository } from './database/privileged.repository.js';
import { HEAD_SECTION } from './incident-head.js';
import { type IncidentOutline, outlineOf, recordOf } from './incident-views.js';

/** What is kept of an incident, for whoever decides how long. */
export interface IncidentContents {
  readonly outline: IncidentOutline;
  readonly record: IncidentRecord;
  /** Every section by its name, those of the service among them. */
  readonly sections: ReadonlyMap<string, JsonObject>;
  /** RFC 3339: when somebody last said that it is open or closed. */
  readonly statusSince: string;
  readonly drafts: { readonly count: number; readonly lastAt: string | null };
  /** How many times counsel asked for notes. */
  readonly notes: number;
}

/** Many incidents at once, in a few statements. */
@Injectable()
export class RecordContents {
  constructor(
    private readonly incidents: IncidentsRepository,
    private readonly drafts: DraftsRepository,
    private readonly privileged: PrivilegedRepository,
  ) {}

  async of(ids: readonly string[]): Promise<IncidentContents[]> {
    if (ids.length === 0) return [];
    const rows = await this.incidents.ofIds(ids);
    const sections = groupBy(await this.incidents.sectionsOf(ids));
    const drafts = groupBy(await this.drafts.ofIncidents(ids));
    const notes = groupBy(await this.privileged.requestsOf(ids));
    return rows.map((row) => {
      const written: SectionRow[] = sections.get(row.id) ?? [];
      const saved = (drafts.get(row.id) ?? []).map(({ savedAt }) => savedAt).sort();
      return {
        outline: outlineOf(row),
        record: recordOf(written),
        sections: new Map(written.map(({ section, document }) => [section, document])),
        statusSince: written.find(({ section }) => section === HEAD_SECTION)?.updatedAt ?? row.updatedAt,
        drafts: { count: saved.length, lastAt: saved.at(-1) ?? null },
        notes: notes.get(row.id)?.length ?? 0,
      };
    });
  }
}

function groupBy<Row extends { incidentId: string }>(rows: readonly Row[]): Map<string, Row[]> {
  const groups = new Map<string, Row[]>();
  for (const row of rows) groups.set(row.incidentId, [...(groups.get(row.incidentId) ?? []), row]);
  return groups;
}
