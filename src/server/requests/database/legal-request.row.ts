import { Entity, Index, Unique } from 'typeorm';
import type { LegalRequest } from '../../../../shared/record/legal-request.js';
import {
  FlagColumn,
  IdColumn,
  InstantColumn,
  IntegerColumn,
  JsonColumn,
  ReferenceColumn,
  TextColumn,
} from '../../platform/database/columns.js';

/** A request as it stands. Rows are never deleted, and what stood before is among its versions. */
@Entity('legal_request')
@Unique(['number'])
@Index(['isOpen', 'listOrder', 'id'])
export class LegalRequestRow {
  @IdColumn() id: string;
  @TextColumn() number: string;
  @IntegerColumn() version: number;
  @FlagColumn() isOpen: boolean;
  @TextColumn() kind: string;
  /** Of one that is open, the time that runs out first, before every instant where nobody knows; else when it was closed. */
  @TextColumn() listOrder: string;
  @JsonColumn() request: LegalRequest;
}

/** One version of a request, whole, with who brought it about; versions are only ever added. */
@Entity('legal_request_version')
@Unique(['requestId', 'version'])
export class LegalRequestVersionRow {
  @IdColumn() id: string;
  @ReferenceColumn('legal_request') requestId: string;
  @IntegerColumn() version: number;
  /** What was done, in a word of the service. */
  @TextColumn() what: string;
  @TextColumn({ nullable: true }) reason: string | null;
  @TextColumn() person: string;
  @TextColumn({ nullable: true }) accountId: string | null;
  @InstantColumn() at: string;
  @JsonColumn() request: LegalRequest;
}

/** Which incidents a request is thought to concern now: a list that follows from it, to find it by. */
@Entity('legal_request_incident')
@Index(['incidentId'])
export class LegalRequestIncidentRow {
  @ReferenceColumn('legal_request', { primary: true }) requestId: string;
  @ReferenceColumn('incident', { primary: true }) incidentId: string;
}

export const REQUEST_ROWS = [LegalRequestRow, LegalRequestVersionRow, LegalRequestIncidentRow];
