import { Entity, Index, Unique } from 'typeorm';
import type { IncidentStatus, SectionName } from '../../../../shared/record/incident-record.js';
import type { JsonObject } from '../../../../shared/record/json-value.js';
import type { IncidentSummary } from '../../../../shared/record/summarize-section.js';
import {
  ChoiceColumn,
  FlagColumn,
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/** What each section gives to the summary. */
export type SummaryParts = Partial<Record<SectionName, IncidentSummary>>;

/** The current view of an incident, for lists; the log of amendments is what it is made of. */
@Entity('incident')
@Unique(['reference'])
@Index(['openedAt', 'id'])
@Index(['status', 'openedAt', 'id'])
export class IncidentRow {
  @IdColumn() id: string;
  @TextColumn() reference: string;
  @InstantColumn() openedAt: string;
  @ChoiceColumn(['open', 'closed']) status: IncidentStatus;
  @IntegerColumn() version: number;
  @IntegerColumn() latestAmendment: number;
  @InstantColumn() updatedAt: string;
  @JsonColumn() summary: SummaryParts;
}

/** The current view of one section. */
@Entity('incident_section')
export class SectionRow {
  @ReferenceColumn('incident', { primary: true }) incidentId: string;
  @TextColumn({ primary: true }) section: string;
  @JsonColumn() document: JsonObject;
  @IntegerColumn() version: number;
  @FlagColumn() finished: boolean;
  @IntegerColumn() latestAmendment: number;
  @InstantColumn() updatedAt: string;
  /** What it is found by. */
  @TextColumn({ hidden: true }) words: string;
}
