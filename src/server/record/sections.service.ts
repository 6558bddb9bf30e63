import { Injectable } from '@nestjs/common';
import { addFields } from '../../../shared/record/add-fields.js';
import { altersWords, findForbiddenChanges } from '../../../shared/record/check-amendment.js';
import { findChanges } from '../../../shared/record/find-changes.js';
import type { SectionName } from '../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import { locateField } from '../../../shared/record/locate-field.js';
import { readSection } from '../../../shared/wire/record-reading.js';
import type { WriteSectionDto } from '../../../shared/wire/record-requests.dto.js';
import type { Actor } from '../accounts/accounts.api.js';
import { assertFresh } from '../platform/http/entity-tag.js';
import { ProblemException, problemOfStatus } from '../platform/http/problem.js';
import { readInput } from '../platform/http/read-input.js';
import { authorOf, holderOf, sameAuthor } from './actor-words.js';
import { AmendmentsRepository } from './database/amendments.repository.js';
import { DraftsRepository } from './database/drafts.repository.js';
import type { SectionRow } from './database/incident.row.js';
import { IncidentsRepository } from './database/incidents.repository.js';
import { authorOfRow } from './history.service.js';
import { assertMayWrite, IncidentAccess, sectionNamed } from './incident-access.js';
import { type SectionView, viewOf } from './incident-views.js';
import { RecordLog } from './record-log.js';
import { refuse } from '../platform/http/refuse.js';
import { SectionWriter, unwritten } from './section-writer.js';

/** Reads a section, finishes it, amends it and adds to it. */
@Injectable()
export class SectionsService {
  constructor(
    private readonly log: RecordLog,
    private readonly writer: SectionWriter,
    private readonly incidents: IncidentsRepository,
    private readonly amendments: AmendmentsRepository,
    private readonly drafts: DraftsRepository,
    private readonly access: IncidentAccess,
  ) {}

  async read(id: string, name: string, actor: Actor): Promise<SectionView> {
    const section = sectionNamed(name);
    await this.access.read(id, actor);
    return viewOf(await this.section(id, section));
  }

  /**
   * Finishes a section, or amends it once it is finished.
   * @throws ProblemException 412 with both versions when somebody changed it meanwhile; a device, which reads nothing,
   * is told the version alone
   */
  async write(
    id: string,
    name: string,
    { document, reason }: WriteSectionDto,
    ifMatch: string | undefined,
    actor: Actor,
  ): Promise<SectionView> {
    assertMayWrite(actor);
    const section = sectionNamed(name);
    readInput(readSection(section, document, ['document']));
    return this.log.run(async () => {
      const incident = await this.access.find(id, actor);
      const before = await this.section(id, section);
      const current = viewOf(before);
      assertFresh(ifMatch, actor.kind === 'device' ? { version: current.version } : current, { document });
      await this.assertAllowed(before, document as JsonObject, reason, actor);
      const change = { document: document as JsonObject, reason, finish: true };
      const after = await this.writer.amend(incident, before, change, actor);
      await this.drafts.remove({ incidentId: id, section, holder: holderOf(actor) });
      return viewOf(after);
    });
  }

  /** Adds fields and items, altering nothing: needs no version, and the same again changes nothing. */
  async add(id: string, name: string, addition: object, actor: Actor) {
    assertMayWrite(actor);
    const section = sectionNamed(name);
    readInput(readSection(section, addition));
    const { version, finished } = await this.log.run(async () => {
      const incident = await this.access.find(id, actor);
      const before = await this.section(id, section);
      const sum = addFields(before.document, addition as JsonObject);
      if (!sum.ok)
        throw new ProblemException({ ...problemOfStatus(409), source: 'request', errors: sum.errors });
      readInput(readSection(section, sum.document));
      return this.writer.amend(incident, before, { document: sum.document }, actor);
    });
    return { section, version, finished };
  }

  private async section(id: string, section: SectionName): Promise<SectionRow> {
    return (await this.incidents.section(id, section)) ?? unwritten(id, section);
  }

  /** Finished words, and those of somebody else, are altered with a reason; a statement not at all. */
  private async assertAllowed(
    before: SectionRow,
    document: JsonObject,
    reason: string | undefined,
    actor: Actor,
  ): Promise<void> {
    const edits = findChanges(before.document, document);
    if (before.finished) {
      const errors = findForbiddenChanges(edits).map(({ pointer, detail }) => ({
        pointer: `/document${locateField(document, pointer)}`,
        detail,
      }));
      if (errors.length > 0)
        throw new ProblemException({ ...problemOfStatus(422), source: 'request', errors });
    }
    if (reason !== undefined || !altersWords(edits)) return;
    if (before.finished || !(await this.wroteAll(before, actor))) {
      refuse(422, 'Say why: this alters words that were finished, or that somebody else wrote.', '/reason');
    }
  }

  private async wroteAll({ incidentId, section }: SectionRow, actor: Actor): Promise<boolean> {
    const author = authorOf(actor);
    const rows = await this.amendments.ofSection(incidentId, section);
    return rows.every((row) => sameAuthor(authorOfRow(row), author));
  }
}
