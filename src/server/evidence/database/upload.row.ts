import { Entity, Index } from 'typeorm';
import type { EvidenceWords } from '../../../../shared/record/evidence-section.js';
import {
  IdColumn,
  InstantColumn,
  JsonColumn,
  NumberColumn,
  ReferenceColumn,
} from '../../platform/database/columns.js';

/** What a device said about a file before it sent it. */
export interface Announced {
  readonly name?: string;
  readonly type?: string;
  readonly sha256?: string;
  readonly about?: EvidenceWords;
}

/** A file that is arriving, or has arrived under the same id. How much of it is there, the file itself tells. */
@Entity('evidence_upload')
@Index(['incidentId', 'finishedAt'])
export class UploadRow {
  @IdColumn() id: string;
  @ReferenceColumn('incident') incidentId: string;
  /** Bytes; a number of 64 bits, as a video may pass 2 GiB. */
  @NumberColumn() size: number;
  /** Null once the record has it. */
  @JsonColumn({ nullable: true }) announced: Announced | null;
  @InstantColumn() startedAt: string;
  @InstantColumn({ nullable: true }) finishedAt: string | null;
}
