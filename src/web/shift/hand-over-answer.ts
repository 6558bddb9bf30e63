import type { ShiftSummary } from '../../../shared/follow-up/summarize-shift.js';

/** `GET /api/shift-hand-overs/:id`: as it was gathered and signed. */
export interface HandOverAnswer {
  readonly id: string;
  readonly version: number;
  readonly summary: ShiftSummary;
  readonly remarks: string | null;
  readonly builtBy: string;
  readonly outgoingId: string | null;
  readonly outgoingName: string | null;
  readonly outgoingAt: string | null;
  readonly incomingName: string | null;
  readonly incomingAt: string | null;
}

/** `GET /api/shift-hand-overs` */
export interface HandOversAnswer {
  readonly items: readonly HandOverAnswer[];
  readonly next: string | null;
}

export const HAND_OVERS = '/api/shift-hand-overs';
