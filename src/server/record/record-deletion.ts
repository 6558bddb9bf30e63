import { Injectable } from '@nestjs/common';
import { buildSection } from '../../../shared/record/build-section.js';
import { flattenSection } from '../../../shared/record/flatten-section.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import { reasonOf } from '../../../shared/record/replay-amendments.js';
import { isSectionName } from '../../../shared/wire/record-sections.js';
import type { Actor } from '../accounts/accounts.api.js';
import type { PrivilegedSection } from './commit-privileged.js';
import type { AmendmentRow } from './database/amendment.row.js';
import { AmendmentsRepository } from './database/amendments.repository.js';
import { DraftsRepository } from './database/drafts.repository.js';
import { IncidentsRepository } from './database/incidents.repository.js';
import { PrivilegedRepository } from './database/privileged.repository.js';
import { SectionWriter, unwritten } from './section-writer.js';
import { DELETED, goesWithItsList, isWordOfService } from './words-of-service.js';
import { WithdrawnContent, without } from './withdrawn-content.js';

/** Says which fields go, by section and path. */
export type Goes = (section: string, path: string) => boolean;

/**
 * Deletes what has been kept long enough, within `ServiceSections.run`: out of sections, amendments and drafts, with the
 * reasons beside it. The commitments stay, so that the log still proves itself and says that it went, by whom and why.
 */
@Injectable()
export class RecordDeletion {
  constructor(
    private readonly incidents: IncidentsRepository,
    private readonly amendments: AmendmentsRepository,
    private readonly drafts: DraftsRepository,
    private readonly privileged: PrivilegedRepository,
    private readonly content: WithdrawnContent,
    private readonly writer: SectionWriter,
  ) {}

  /** Fields of sections that people write. @returns how many fields went */
  async fields(incidentId: string, goes: Goes, reason: string, actor: Actor): Promise<number> {
    let count = 0;
    for (const [section, rows] of await this.bySection(incidentId)) {
      if (!isSectionName(section)) continue;
      count += await this.takeOut(incidentId, section, rows, (path) => goes(section, path), reason, actor);
    }
    for (const draft of await this.drafts.ofIncidents([incidentId])) {
      const gone = [...flattenSection(draft.document).keys()].filter((path) => goes(draft.section, path));
      if (gone.length > 0)
        await this.drafts.save({ ...draft, document: without(draft.document, new Set(gone)) });
    }
    return count;
  }

  /**
   * The words of people in sections of the service itself. Where a word is gone, the section says so in its place: that
   * somebody signed or filed, and when, stays readable.
   */
  async wordsOfService(incidentId: string, reason: string, actor: Actor): Promise<void> {
    for (const [section, rows] of await this.bySection(incidentId)) {
      if (isSectionName(section)) continue;
      const isWord = (path: string) => isWordOfService(section, path);
      const goes = (path: string) => isWord(path) || goesWithItsList(section, path);
      const told = flattenSection((await this.incidents.section(incidentId, section))?.document ?? {});
      if ((await this.takeOut(incidentId, section, rows, goes, reason, actor)) === 0) continue;
      const places = [...told].flatMap(([path, value]): [string, string][] =>
        isWord(path) && typeof value === 'string' ? [[path, DELETED]] : [],
      );
      const left = flattenSection((await this.incidents.section(incidentId, section))?.document ?? {});
      if (places.length === 0) continue;
      const document = buildSection(new Map([...left, ...places]));
      await this.amend(incidentId, section, document, reason, actor);
    }
  }

  /** Notes for counsel with the requests for them. @returns how many notes went */
  async privilegedNotes(incidentId: string, reason: string, actor: Actor): Promise<number> {
    const requests = (await this.privileged.requests(incidentId)).map(({ id }) => id);
    const entries = requests.length === 0 ? [] : await this.privileged.entries(requests);
    if (requests.length === 0) return 0;
    await this.privileged.remove(requests);
    const before = ((await this.incidents.section(incidentId, 'privileged'))?.document ??
      {}) as PrivilegedSection;
    const gone = (list: PrivilegedSection['entries'] = []) =>
      list.map((one) => ({ ...one, deleted: true as const }));
    const document = { requests: gone(before.requests), entries: gone(before.entries) };
    await this.amend(incidentId, 'privileged', document, reason, actor);
    return entries.length;
  }

  /** @returns how many drafts went */
  async allDrafts(incidentId: string): Promise<number> {
    const drafts = await this.drafts.ofIncidents([incidentId]);
    for (const draft of drafts) await this.drafts.remove(draft);
    return drafts.length;
  }

  private async takeOut(
    incidentId: string,
    section: string,
    rows: readonly AmendmentRow[],
    goes: (path: string) => boolean,
    reason: string,
    actor: Actor,
  ): Promise<number> {
    const paths = new Set(rows.flatMap((row) => writtenIn(row).filter(goes)));
    const touching = rows.filter(({ changes }) => changes.some(({ path }) => paths.has(path)));
    const reasons = touching.filter(({ reasonOpening }) => reasonOpening !== null);
    if (paths.size === 0) return 0;
    for (const { sequence } of reasons) await this.amendments.dropReason(sequence);
    const withdrawn = [...[...paths].sort(), ...reasons.map(({ sequence }) => reasonOf(sequence))];
    const before = (await this.incidents.section(incidentId, section)) ?? unwritten(incidentId, section);
    const incident = await this.found(incidentId);
    await this.content.takeOut(incident, before, withdrawn, reason, actor, { deletion: true });
    return paths.size;
  }

  private async amend(
    incidentId: string,
    section: string,
    document: JsonObject,
    reason: string,
    actor: Actor,
  ): Promise<void> {
    const before = (await this.incidents.section(incidentId, section)) ?? unwritten(incidentId, section);
    const change = { document, reason, deletion: true };
    await this.writer.amend(await this.found(incidentId), before, change, actor);
  }

  private async bySection(incidentId: string): Promise<Map<string, AmendmentRow[]>> {
    const sections = new Map<string, AmendmentRow[]>();
    for (const row of await this.amendments.ofIncident(incidentId)) {
      sections.set(row.section, [...(sections.get(row.section) ?? []), row]);
    }
    return sections;
  }

  private async found(id: string) {
    const incident = await this.incidents.find(id);
    if (incident === null) throw new Error(`There is no incident ${id}.`);
    return incident;
  }
}

/** Paths of an amendment whose content is still there; that there was nothing is no content. */
function writtenIn({ changes, openings }: AmendmentRow): string[] {
  return changes.flatMap(({ path }, index) => {
    const { from = null, to = null } = openings[index] ?? {};
    const is = [from, to].some((side) => side !== null && side.value !== null);
    return path.startsWith('/') && is ? [path] : [];
  });
}
