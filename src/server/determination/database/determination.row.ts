import { Entity, Unique } from 'typeorm';
import type { Determination } from '../../../../shared/determination/determination.js';
import type { IncidentFacts } from '../../../../shared/record/incident-facts.js';
import {
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';
import type { PackVersion } from '../pack-version.js';

/** A determination as it was made; the next one supersedes it, and only withdrawn words go out of it. */
@Entity('determination')
@Unique(['incidentId', 'sequence'])
export class DeterminationRow {
  @IdColumn() id: string;
  @ReferenceColumn('incident') incidentId: string;
  /** From 1 within the incident. */
  @IntegerColumn() sequence: number;
  @InstantColumn() madeAt: string;
  /** The last amendment of the record that it saw. */
  @IntegerColumn() amendment: number;
  @JsonColumn() facts: IncidentFacts;
  @JsonColumn() packs: PackVersion[];
  @JsonColumn() determination: Determination;
}

/** The law that every determination was last held against. */
@Entity('law_applied')
export class LawAppliedRow {
  @IdColumn() id: string;
  @TextColumn() digest: string;
  @InstantColumn() appliedAt: string;
}

export const DETERMINATION_ROWS = [DeterminationRow, LawAppliedRow];
