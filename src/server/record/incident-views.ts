import type { IncidentRecord, IncidentStatus } from '../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../shared/record/json-value.js';
import { joinSummaries, type IncidentSummary } from '../../../shared/record/summarize-section.js';
import { isSectionName } from '../../../shared/wire/record-sections.js';
import type { IncidentRow, SectionRow } from './database/incident.row.js';
import { HEAD_SECTION, headOf } from './incident-head.js';

/** An incident without anything that was said in it. */
export interface IncidentOutline {
  id: string;
  reference: string;
  status: IncidentStatus;
  openedAt: string;
  version: number;
  latestAmendment: number;
  updatedAt: string;
}

export interface IncidentLine extends IncidentOutline {
  summary: IncidentSummary;
}

export interface SectionView {
  section: string;
  version: number;
  finished: boolean;
  latestAmendment: number;
  updatedAt: string | null;
  document: JsonObject;
}

export type SectionOutline = Pick<SectionView, 'section' | 'version' | 'finished'>;

export function outlineOf(row: IncidentRow): IncidentOutline {
  const { id, reference, status, openedAt, version, latestAmendment, updatedAt } = row;
  return { id, reference, status, openedAt, version, latestAmendment, updatedAt };
}

export function lineOf(row: IncidentRow): IncidentLine {
  return { ...outlineOf(row), summary: joinSummaries(row.summary) };
}

export function viewOf(row: SectionRow): SectionView {
  const { section, version, finished, latestAmendment, updatedAt, document } = row;
  return { section, version, finished, latestAmendment, updatedAt: updatedAt || null, document };
}

/** Sections that people wrote, and the head: those of other modules are shown by these alone. */
export function withoutServiceSections<S extends { section: string }>(sections: readonly S[]): S[] {
  return sections.filter(({ section }) => section === HEAD_SECTION || isSectionName(section));
}

export function sectionOutline({ section, version, finished }: SectionRow): SectionOutline {
  return { section, version, finished };
}

/** The record of an incident from its sections, the service's own among them. */
export function recordOf(sections: readonly Pick<SectionRow, 'section' | 'document'>[]): IncidentRecord {
  const written = sections.filter(({ section }) => isSectionName(section));
  return {
    incident: headOf(sections.find(({ section }) => section === HEAD_SECTION)?.document ?? {}),
    sections: Object.fromEntries(written.map(({ section, document }) => [section, document])),
  };
}
