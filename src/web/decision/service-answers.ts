import type { Decision, LegalCall, Reopening } from '../../../shared/decision/decision.js';
import type { Filing } from '../../../shared/decision/filing.js';
import type { ReportState } from '../../../shared/decision/follow-report.js';
import type { OperatorNotice, OperatorProposal } from '../../../shared/decision/operator-notice.js';
import type { Proposal } from '../../../shared/decision/propose-decision.js';
import type { Determination, Duty, Question, Reporter } from '../../../shared/determination/determination.js';
import type { FieldError } from '../../../shared/kernel/field-error.js';
import type { IncidentFacts } from '../../../shared/record/incident-facts.js';

/** What the service says about the duties of an incident, at the addresses beside each. */

/** `GET /api/incidents/:id` */
export interface IncidentAnswer {
  readonly reference: string;
  readonly status: 'open' | 'closed';
}

/** One report of the incident, as it is decided about. */
export interface DutyView extends Pick<
  Duty,
  'jurisdiction' | 'kind' | 'outcome' | 'immediate' | 'dueAt' | 'dueAtIfRequired' | 'dueBasis' | 'authority'
> {
  readonly duty: string;
  readonly vessel: string | null;
  readonly form: 'report' | 'notice';
  readonly reporter: Pick<Reporter, 'who' | 'text'>;
  readonly questions: readonly Question[];
  readonly state: ReportState;
  readonly decision: Decision | null;
  readonly reopenings: readonly Reopening[];
  /** Ids of those that count. */
  readonly filings: readonly string[];
  readonly proposal: Proposal | null;
  readonly operator: OperatorProposal | null;
  readonly callFirst: string | null;
  /** RFC 3339. */
  readonly changedAt: string;
}

/** `GET /api/incidents/:id/duties`; `determination` is null while nothing was determined. */
export interface DutiesAnswer {
  readonly determination: number | null;
  readonly items: readonly DutyView[];
}

/** `GET /api/incidents/:id/determination`, and `…/determinations/:sequence`, which tells no assumptions. */
export interface DeterminationAnswer {
  /** Its number within the incident. */
  readonly version: number;
  readonly madeAt: string;
  readonly facts: IncidentFacts;
  readonly determination: Determination;
  readonly packs: readonly {
    readonly jurisdiction: string;
    readonly sha256: string;
    readonly readOn: string;
  }[];
  /** Where the facts say more than the record does, by their pointers. */
  readonly assumptions?: readonly FieldError[];
}

/** `GET /api/incidents/:id/determinations` */
export interface DeterminationsAnswer {
  readonly items: readonly DeterminationLine[];
  readonly next: string | null;
}

export interface DeterminationLine {
  readonly sequence: number;
  readonly madeAt: string;
  readonly duties: readonly Pick<Duty, 'id' | 'outcome' | 'dueAt'>[];
}

/** `GET /api/incidents/:id/decisions` */
export interface DecisionsAnswer {
  readonly items: readonly Decision[];
  readonly reopenings: readonly Reopening[];
}

/** `GET /api/incidents/:id/filings`, `…/operator-notices` and `…/legal-calls` */
export interface Listed<Item> {
  readonly items: readonly Item[];
}
export type FilingsAnswer = Listed<Filing>;
export type OperatorNoticesAnswer = Listed<OperatorNotice>;
export type LegalCallsAnswer = Listed<LegalCall>;

/** `GET /api/incidents/:id/sections/:section` */
export interface SectionAnswer {
  readonly version: number;
  readonly document: Readonly<Record<string, unknown>>;
}

/** `GET /api/incidents/:id/evidence` */
export interface EvidenceAnswer {
  readonly files: readonly { readonly id: string; readonly name?: string; readonly kind: string }[];
}
