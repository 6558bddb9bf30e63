import { Injectable } from '@nestjs/common';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import { replayAmendments } from '../../../shared/record/replay-amendments.js';
import type { Actor } from '../accounts/accounts.api.js';
import type { IncidentRow } from './database/incident.row.js';
import { AmendmentsRepository } from './database/amendments.repository.js';
import { IncidentsRepository } from './database/incidents.repository.js';
import { pastOf } from './history.service.js';
import { type IncidentOutline, outlineOf, recordOf } from './incident-views.js';
import { RecordLog } from './record-log.js';
import { SectionWriter, unwritten } from './section-writer.js';
import { WithdrawnContent } from './withdrawn-content.js';

/** Sections that the service writes itself, each for the module that keeps it. Nobody writes them by a section's route. */
export type ServiceSection =
  | 'holds'
  | 'assignments'
  | 'privileged'
  | 'evidence'
  | 'custody'
  | 'outside-evidence'
  | 'scope-answers'
  | 'decisions'
  | 'filings'
  | 'reports'
  | 'hand-overs'
  | 'requests'
  | 'retention';

/**
 * The record for other modules of the service: what it says, and sections of their own in it. What they write there
 * becomes amendments of the one log, so that history, the record as of a moment and `verify` cover it.
 */
@Injectable()
export class ServiceSections {
  constructor(
    private readonly log: RecordLog,
    private readonly incidents: IncidentsRepository,
    private readonly amendments: AmendmentsRepository,
    private readonly writer: SectionWriter,
    private readonly content: WithdrawnContent,
  ) {}

  /** A unit of work that writes to the record; inside another it becomes a part of that. */
  run<T>(work: () => Promise<T>): Promise<T> {
    return this.log.run(work);
  }

  /**
   * Everything that people wrote about an incident, with its head.
   * @param at as of which moment (RFC 3339), without what was withdrawn since; now, where none is given
   */
  async record(incidentId: string, at?: string): Promise<IncidentRecord> {
    if (at === undefined) return recordOf(await this.incidents.sections(incidentId));
    const past = [...(await this.past(incidentId, at))];
    return recordOf(past.map(([section, { document }]) => ({ section, document })));
  }

  /**
   * What stands at the top of an incident, without anything that was said in it.
   * @throws Error when there is no such incident
   */
  async outline(incidentId: string): Promise<IncidentOutline> {
    return outlineOf(await this.found(incidentId));
  }

  /** References by id, for lists over many incidents. */
  references(ids: readonly string[]): Promise<Map<string, string>> {
    return this.incidents.references(ids);
  }

  /** Ids of incidents in their order, after one of them; for work on all of them, part by part. */
  ids(after: string | null, limit: number): Promise<string[]> {
    return this.incidents.ids(after, limit);
  }

  /**
   * A section as it stands, or as it stood at a moment, without what was withdrawn since; empty while nobody had
   * written it.
   */
  async read<T extends object>(
    incidentId: string,
    section: ServiceSection,
    at?: string,
  ): Promise<Partial<T>> {
    const found =
      at === undefined
        ? await this.incidents.section(incidentId, section)
        : (await this.past(incidentId, at)).get(section);
    return (found?.document ?? {}) as Partial<T>;
  }

  /**
   * Makes a section this document, within `run`; nothing is written when it says what it said before. Lists of things
   * are lists of objects with an `id` each.
   * @throws Error when there is no such incident
   */
  async write(
    incidentId: string,
    section: ServiceSection,
    document: object,
    actor: Actor,
    reason?: string,
  ): Promise<void> {
    const incident = await this.found(incidentId);
    const before = (await this.incidents.section(incidentId, section)) ?? unwritten(incidentId, section);
    await this.writer.amend(incident, before, { document: document as JsonObject, reason }, actor);
  }

  /**
   * Makes a section this document, within `run`, and takes what ever stood at some paths or below them out of the
   * amendments that wrote it; commitments and reason stay.
   */
  async withdraw(
    incidentId: string,
    section: ServiceSection,
    { document, paths }: { document: object; paths: readonly string[] },
    actor: Actor,
    reason: string,
  ): Promise<void> {
    const incident = await this.found(incidentId);
    const before = (await this.incidents.section(incidentId, section)) ?? unwritten(incidentId, section);
    const gone: string[] = [];
    for (const path of paths) gone.push(...(await this.content.pathsUnder(incidentId, section, path)));
    await this.content.takeOut(incident, before, gone, reason, actor, { left: document as JsonObject });
  }

  private async past(incidentId: string, at: string) {
    return replayAmendments((await this.amendments.ofIncident(incidentId, at)).map(pastOf));
  }

  private async found(id: string): Promise<IncidentRow> {
    const incident = await this.incidents.find(id);
    if (incident === null) throw new Error(`There is no incident ${id}.`);
    return incident;
  }
}
