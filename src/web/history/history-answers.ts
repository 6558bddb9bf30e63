import type { JsonObject, JsonValue } from '../../../shared/record/json-value.js';

/** `GET /api/incidents/:id/amendments`, the newest first */
export interface AmendmentsAnswer {
  readonly items: readonly AmendmentAnswer[];
  /** The `after` of the page behind this one; null where there is none. */
  readonly next: string | null;
}

export interface AmendmentAnswer {
  /** Its number in the one log of the house. */
  readonly sequence: number;
  readonly section: string;
  readonly madeAt: string;
  /** Name of whoever wrote; empty for a device on which nobody had signed in. */
  readonly person: string;
  readonly reason: string | null;
  readonly reasonWithdrawn?: boolean;
  readonly finished: boolean;
  /** Paths that it takes out. */
  readonly withdraws: readonly string[];
  readonly changes: readonly ChangeAnswer[];
}

export interface ChangeAnswer {
  readonly path: string;
  readonly from: JsonValue;
  readonly to: JsonValue;
  readonly withdrawn?: boolean;
}

/** `GET /api/incidents/:id/record?at=` */
export interface RecordAnswer {
  readonly id: string;
  readonly reference: string;
  readonly version: number;
  /** The moment that was asked for; null for now. */
  readonly at: string | null;
  readonly sections: readonly PastSectionAnswer[];
}

export interface PastSectionAnswer {
  readonly section: string;
  readonly version: number;
  readonly finished: boolean;
  readonly document: JsonObject;
  /** Paths that were withdrawn since; only as of a moment. */
  readonly withdrawn?: readonly string[];
}
