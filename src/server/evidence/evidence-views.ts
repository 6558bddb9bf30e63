import { type EvidenceQuestion, listEvidenceQuestions } from '../../../shared/record/evidence-questions.js';
import { evidenceIsRestricted } from '../../../shared/record/evidence-restriction.js';
import type { EvidenceFile } from '../../../shared/record/evidence-section.js';
import type { IncidentRecord } from '../../../shared/record/incident-record.js';
import type { UploadRow } from './database/upload.row.js';
import { PREVIEW_EDGES } from './previews.js';

/** A file as it is shown: what the record says of it, and what follows from that. */
export interface EvidenceFileView extends EvidenceFile {
  readonly isRestricted: boolean;
  readonly questions: readonly EvidenceQuestion[];
  /** Longer edges of the previews there are, in pixels. */
  readonly previews: readonly number[];
}

/** What whoever sent a file is told: that it arrived, and as what. Also a device, which reads nothing, is told that. */
export type EvidenceReceipt = Pick<
  EvidenceFile,
  'id' | 'version' | 'kind' | 'type' | 'size' | 'sha256' | 'receivedAt'
>;

/** A file that is still arriving. */
export interface UploadView {
  readonly id: string;
  readonly version: number;
  readonly size: number;
  /** Bytes that have arrived: the next piece begins there. */
  readonly offset: number;
  readonly longestPiece: number;
  readonly startedAt: string;
}

/** A phone with bad signal sends far smaller ones; what arrived of one that broke off is kept all the same. */
export const LONGEST_PIECE_BYTES = 8 * 1024 * 1024;

export function fileView(file: EvidenceFile, record: IncidentRecord, isShowable: boolean): EvidenceFileView {
  return {
    ...file,
    isRestricted: evidenceIsRestricted(file, record.sections.people ?? {}),
    questions: file.withdrawn === undefined ? listEvidenceQuestions(file, record) : [],
    previews: isShowable ? PREVIEW_EDGES : [],
  };
}

export function receiptOf(file: EvidenceFile): EvidenceReceipt {
  const { id, version, kind, type, size, sha256, receivedAt } = file;
  return { id, version, kind, type, size, sha256, receivedAt };
}

export function uploadView({ id, size, startedAt }: UploadRow, offset: number): UploadView {
  return { id, version: 1, size, offset, longestPiece: LONGEST_PIECE_BYTES, startedAt };
}
