import type { EvidenceKind } from '../../../shared/record/evidence-kind.js';

/** What evidence is handed when the service is put together. */
export class EvidenceSettings {
  constructor(
    readonly folder: string,
    /** Bytes that a file of a kind may have. */
    readonly longestBytes: Readonly<Record<EvidenceKind, number>>,
  ) {}

  /** Before it is known what a file is. */
  get longestOfAll(): number {
    return Math.max(...Object.values(this.longestBytes));
  }
}
