import type { Known } from '../call/known.js';
import type { Ternary } from '../kernel/truth.js';

/** When it happened, as well as anybody can say. */
export interface Occurred {
  /** RFC 3339. With a span, its start. */
  at: string;
  /** End of the span in which it happened. */
  until?: string;
  precision: 'to-the-minute' | 'about' | 'span';
  /** With `about`: how far off it may be, to either side. */
  withinMinutes?: number;
}

export const PRECISIONS: readonly Occurred['precision'][] = ['to-the-minute', 'about', 'span'];

export interface Position {
  /** Degrees, WGS 84, north and east positive. */
  latitude: number;
  longitude: number;
  accuracyM?: number;
  /** As it was said or read, before it was converted. */
  asSaid?: string;
}

/** When and where it happened. */
export interface TimeAndPlace {
  occurred?: Known<Occurred>;
  /** IANA zone. */
  timeZone?: Known<string>;
  position?: Known<Position>;
  /** USPS codes; several while it is not clear on which side of a line it was. */
  states?: Known<string[]>;
  waterBody?: Known<string>;
  nearestTown?: Known<string>;
  county?: Known<string>;
  description?: Known<string>;
  /** Id of a named place of the business. */
  namedPlace?: string;
  /** Waters subject to the jurisdiction of the United States (33 CFR 173.51). */
  federalWaters?: Known<Ternary>;
}
