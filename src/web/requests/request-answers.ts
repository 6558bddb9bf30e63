import type {
  ConcernedIncident,
  Objection,
  Production,
  RequestDetails,
  RequestKind,
  RequestStatus,
  RequestStep,
  WrittenBy,
} from '../../../shared/record/legal-request.js';
import type { RequestCaution } from '../../../shared/record/legal-request-advice.js';

interface Clocks {
  /** RFC 3339; null where nobody has stated a time. */
  readonly dueInstant: string | null;
  readonly overdue: boolean;
  readonly objectionsBy: string | null;
}

/** A line of `GET /api/requests` */
export interface RequestLine extends Clocks {
  readonly id: string;
  readonly number: string;
  readonly kind: RequestKind;
  readonly from: string;
  readonly organization: string | null;
  readonly receivedAt: string;
  readonly status: RequestStatus;
  readonly statusAt: string;
  readonly handlerName: string | null;
  readonly incidents: readonly { readonly incident: string; readonly reference: string }[];
}

export interface ConcernedView extends ConcernedIncident {
  readonly reference: string;
  readonly held: boolean;
}

/** `GET /api/requests/:id` */
export interface RequestView extends RequestDetails, Clocks {
  readonly id: string;
  readonly version: number;
  readonly number: string;
  readonly loggedAt: string;
  readonly by: WrittenBy;
  readonly status: RequestStatus;
  readonly handlerName: string | null;
  readonly incidents: readonly ConcernedView[];
  readonly steps: readonly RequestStep[];
  readonly productions: readonly Production[];
  readonly objections: readonly Objection[];
  readonly cautions: readonly RequestCaution[];
}

/** `GET /api/requests/:id/versions` */
export interface VersionsAnswer {
  readonly items: readonly {
    readonly version: number;
    readonly what: string;
    readonly reason: string | null;
    readonly person: string;
    readonly at: string;
  }[];
}
