import type { Truth } from '../kernel/truth.js';

/** A deadline as the law counts it. */
export interface Deadline {
  /** Epoch milliseconds. */
  readonly at: number;
  readonly immediate: boolean;
  /** The limit in words with its citation. */
  readonly basis: string;
  readonly citation: string | null;
}

/** Something unknown on which a trigger depends. */
export interface OpenPoint {
  /** RFC 6901 pointer into the facts; null for a point of law. */
  readonly fact: string | null;
  readonly text: string;
  /** Some answer to this point alone makes the trigger true. */
  readonly proves: boolean;
  /** Some answer to this point alone makes the trigger false. */
  readonly denies: boolean;
}

/** An open point with the earliest deadline that answering it could bring. */
export interface DatedOpenPoint extends OpenPoint {
  readonly soonest: Deadline;
}

/** What a test says of the facts, before the law's limits are laid on it. */
export interface TestResult {
  readonly value: Truth;
  /** What is known, in a sentence. */
  readonly text: string;
  /** The occurrences that make the test true, each with what moves its clock. */
  readonly holding: readonly ClockFacts[];
  /** What could still make it true (or true of someone else), with what would move its clock. */
  readonly open: readonly { readonly point: OpenPoint; readonly clock: ClockFacts }[];
}

/** What about one person moves a clock; absent members are not known or do not matter. */
export interface ClockFacts {
  /** Epoch milliseconds of the death. */
  readonly diedAt?: number;
  /** Hours from the occurrence to the death, from each end of the span in which it happened. */
  readonly hoursToDeath?: readonly number[];
  /** Epoch milliseconds when a missing person was last seen. */
  readonly lastSeenAt?: number;
  readonly incapacitatedHours?: number;
  /** Epoch milliseconds of an admission to hospital, and of the loss of a limb or an eye. */
  readonly admittedAt?: number;
  readonly lostAt?: number;
  /** Epoch milliseconds when the business learned of that harm, and that work caused it. */
  readonly knownAt?: number;
  /** Epoch milliseconds when a rented craft was due back. */
  readonly dueBackAt?: number;
}

/** One trigger of a rule over the facts: a row of the trace. */
export interface TriggerFinding {
  readonly test: string;
  readonly value: Truth;
  readonly text: string;
  readonly citation: string | null;
  /** The earliest deadline among what makes it true; null unless true. */
  readonly deadline: Deadline | null;
  readonly open: readonly DatedOpenPoint[];
}

export const NOTHING_SPECIAL: ClockFacts = {};
