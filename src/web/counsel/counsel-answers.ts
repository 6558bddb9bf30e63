import type { DirectedWithdrawal, LegalHold } from '../../../shared/record/legal-hold.js';

/** `GET /api/incidents/:id/holds` */
export interface HoldsAnswer {
  readonly held: boolean;
  readonly holds: readonly LegalHold[];
  readonly withdrawals: readonly DirectedWithdrawal[];
}

/** A line of `GET /api/incidents/:id/counsel` */
export interface Assignment {
  readonly id: string;
  readonly account: string;
  readonly name: string;
  readonly assignedAt: string;
  readonly assignedBy: string;
  readonly endedAt?: string;
}

/** One of `GET /api/incidents/:id/counsel-requests`, and of `…/privileged` with what was written. */
export interface CounselRequest {
  readonly id: string;
  readonly counsel: string;
  /** YYYY-MM-DD. */
  readonly requestedOn: string;
  readonly entries?: readonly {
    readonly id: string;
    readonly writtenBy: string;
    readonly writtenAt: string;
    readonly words: string;
  }[];
}

/** A line of `GET /api/accounts` */
export interface AccountLine {
  readonly id: string;
  readonly name: string;
  readonly role: string;
  readonly active: boolean;
}
