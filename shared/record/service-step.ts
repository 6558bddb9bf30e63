import type { Consequence, Gravity } from './weigh-consequence.js';

/** What a person may decide about a craft on the day: the shift lead by the roster, the others by their role. */
export const STANDINGS = ['staff', 'shift-lead', 'manager'] as const;
export type Standing = (typeof STANDINGS)[number];

/**
 * One change of a craft's service. Steps are only ever added: the present state is what they come to. `incident` is the
 * id of the incident that keeps the craft out; null where it is out for upkeep.
 */
export type ServiceStep =
  | { readonly kind: 'taken-out'; readonly incident: string | null; readonly reason: string }
  | { readonly kind: 'weighed'; readonly incident: string; readonly consequence: Consequence }
  | {
      readonly kind: 'photographed';
      readonly incident: string | null;
      readonly photographs: readonly string[];
    }
  | ClearanceStep
  | ReleaseStep
  | { readonly kind: 'not-concerned'; readonly incident: string; readonly reason: string }
  | HeldByAgencyStep
  | ReturnedByAgencyStep
  | { readonly kind: 'do-not-start'; readonly reason: string }
  | { readonly kind: 'start-allowed'; readonly reason: string };

export type ServiceStepKind = ServiceStep['kind'];

/** Counsel or the insurer has no objection to the craft going out again or being repaired. */
export interface ClearanceStep {
  readonly kind: 'cleared';
  readonly incident: string;
  readonly by: 'counsel' | 'insurer';
  readonly person: string;
  /** By letter, by mail of 3 July, by telephone. */
  readonly how: string;
  readonly reference: string | null;
}

export interface ReleaseStep {
  readonly kind: 'released';
  readonly incident: string | null;
  /** Of the craft as it goes out; may be none where they were taken before. */
  readonly photographs: readonly string[];
  readonly remark: string | null;
  /** How grave the incident was taken to be, and by which of the owner's amounts. */
  readonly gravity: Gravity | null;
  readonly ownerAmountCents: number | null;
}

/** An agency took the craft, or keeps it where it lies. What is not known yet is null, and asked for. */
export interface HeldByAgencyStep {
  readonly kind: 'held-by-agency';
  readonly agency: string;
  readonly officer: string | null;
  readonly badge: string | null;
  readonly receipt: string | null;
  /** Taken before it was handed over. */
  readonly photographs: readonly string[];
  readonly hourMeter: number | null;
  readonly keptWhere: string | null;
}

export interface ReturnedByAgencyStep {
  readonly kind: 'returned-by-agency';
  readonly handedOverBy: string | null;
  readonly receipt: string | null;
  readonly photographs: readonly string[];
  readonly hourMeter: number | null;
}
