import { Injectable } from '@nestjs/common';
import { findChanges } from '../../../shared/record/find-changes.js';
import type { IncidentRecord, RecordSections, SectionName } from '../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import { searchable, sectionWords } from '../../../shared/record/section-words.js';
import { SUMMARIZED, summarizeSection } from '../../../shared/record/summarize-section.js';
import { isSectionName } from '../../../shared/wire/record-sections.js';
import type { Actor } from '../accounts/accounts.api.js';
import { authorOf } from './actor-words.js';
import type { IncidentRow, SectionRow, SummaryParts } from './database/incident.row.js';
import { IncidentsRepository } from './database/incidents.repository.js';
import { HEAD_SECTION, headOf } from './incident-head.js';
import { recordOf } from './incident-views.js';
import type { NewAmendment } from './make-amendment.js';
import { RecordChanges } from './record-changes.js';
import { type Appended, RecordLog } from './record-log.js';

/** A section that is to become this document. */
export interface SectionChange extends Pick<NewAmendment, 'reason' | 'withdrawn' | 'kept'> {
  readonly document: JsonObject;
  readonly finish?: boolean;
  /** Its time to be kept is over, and it goes. */
  readonly deletion?: boolean;
}

/** A section that nobody has written yet. */
export function unwritten(incidentId: string, section: string): SectionRow {
  return {
    incidentId,
    section,
    document: {},
    version: 0,
    finished: false,
    latestAmendment: 0,
    updatedAt: '',
    words: '',
  };
}

/** Brings the amendment, the section and the incident forward together, within `RecordLog.run`. */
@Injectable()
export class SectionWriter {
  constructor(
    private readonly log: RecordLog,
    private readonly incidents: IncidentsRepository,
    private readonly changes: RecordChanges,
  ) {}

  /** The section as it then is; nothing is written when it says what it said before. */
  async amend(
    incident: IncidentRow,
    before: SectionRow,
    change: SectionChange,
    actor: Actor,
  ): Promise<SectionRow> {
    const { section } = before;
    const { document, reason, withdrawn, kept } = change;
    const finished = change.finish === true && !before.finished;
    const edits = findChanges(before.document, document);
    if (edits.length === 0 && !finished && withdrawn === undefined) return before;
    const amendment: NewAmendment = { incidentId: incident.id, section, edits, reason, finished };
    const appended = await this.log.append(
      [{ ...amendment, ...(withdrawn && { withdrawn }), ...(kept && { kept }) }],
      authorOf(actor),
    );
    const after = written({ ...before, document, finished: before.finished || finished }, appended);
    if (before.version === 0) await this.incidents.addSections([after]);
    else await this.incidents.updateSection(after);
    await this.incidents.update({
      id: incident.id,
      version: incident.version + 1,
      latestAmendment: appended.last,
      updatedAt: appended.at,
      summary: { ...incident.summary, ...summaryPart(section, document) },
      ...(section === HEAD_SECTION ? { status: headOf(document).status } : {}),
    });
    await this.tell(incident.id, [section], actor, change);
    return after;
  }

  /** The record is read once for all who are told of the change, and only if one of them asks. */
  private async tell(
    incidentId: string,
    sections: readonly string[],
    actor: Actor,
    { withdrawn = [], deletion = false }: Pick<SectionChange, 'withdrawn' | 'deletion'> = {},
  ): Promise<void> {
    let read: Promise<IncidentRecord> | undefined;
    const record = () => (read ??= this.incidents.sections(incidentId).then(recordOf));
    await this.changes.tell({ incidentId, sections, actor, withdrawn, deletion, record });
  }

  /** Writes an incident that was not there: its head and, where something was said, its call. */
  async open(id: string, sections: ReadonlyMap<string, JsonObject>, actor: Actor): Promise<void> {
    const amendments = [...sections].map(([section, document]): NewAmendment => ({
      incidentId: id,
      section,
      edits: findChanges({}, document),
    }));
    await this.log.append(amendments, authorOf(actor), async ({ at, last }) => {
      const rows = [...sections].map(([section, document], index) =>
        written({ ...unwritten(id, section), document }, { at, last: last - amendments.length + index + 1 }),
      );
      const parts = rows.map(({ section, document }) => summaryPart(section, document));
      const { reference, openedAt, status } = headOf(sections.get(HEAD_SECTION) ?? {});
      await this.incidents.add({
        id,
        reference,
        openedAt,
        status,
        version: rows.length,
        latestAmendment: last,
        updatedAt: at,
        summary: Object.assign({}, ...parts) as SummaryParts,
      });
      await this.incidents.addSections(rows);
    });
    await this.tell(id, [...sections.keys()], actor);
  }
}

function written(row: SectionRow, { at, last }: Appended): SectionRow {
  const { section, document, version } = row;
  const words = wordsOf(section, document);
  return { ...row, version: version + 1, latestAmendment: last, updatedAt: at, words };
}

/** What a section is found by: an incident by its reference, a section of the service itself by nothing. */
export function wordsOf(section: string, document: JsonObject): string {
  if (section === HEAD_SECTION) return searchable(headOf(document).reference);
  return isSectionName(section) ? sectionWords(document) : '';
}

/** What a section gives to the summary of its incident, under its name. */
export function summaryPart(section: string, document: JsonObject): SummaryParts {
  const name = SUMMARIZED.find((one) => one === section);
  return name === undefined ? {} : { [name]: summarizeSection(name, sectionOf(document)) };
}

/** A document that its reader has passed. */
export function sectionOf<N extends SectionName>(document: JsonObject): RecordSections[N] {
  return document;
}
