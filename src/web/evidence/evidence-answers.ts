import type { EvidenceQuestion } from '../../../shared/record/evidence-questions.js';
import type { CustodyItem, EvidenceFile, OutsideEvidence } from '../../../shared/record/evidence-section.js';

/** What the service says about evidence, at the addresses beside each. */

/** `GET /api/incidents/:id/evidence` */
export interface EvidenceAnswer {
  readonly files: readonly FileAnswer[];
  /** How many more there are for managers, administrators and counsel alone. */
  readonly restricted: number;
  readonly arriving: readonly { readonly id: string; readonly size: number; readonly offset: number }[];
}

export interface FileAnswer extends EvidenceFile {
  readonly isRestricted: boolean;
  readonly questions: readonly EvidenceQuestion[];
  /** Longer edges of the previews there are, in pixels. */
  readonly previews: readonly number[];
}

/** `GET /api/incidents/:id/custody` */
export interface CustodyAnswer {
  readonly items: readonly CustodyAnswerItem[];
}

export interface CustodyAnswerItem extends CustodyItem {
  readonly gaps: readonly string[];
}

/** `GET /api/incidents/:id/outside-evidence` */
export interface OutsideAnswer {
  readonly items: readonly OutsideAnswerItem[];
}

export interface OutsideAnswerItem extends OutsideEvidence {
  readonly gaps: readonly string[];
}
