/**
 * The lines of the states, laid out for searching when the project is built. Limits that every user must
 * know: the boundaries are generalised (Census Bureau, 1 : 10 million) and err by up to 300 m, rivers are
 * cut into straight pieces, and they stop at the shore of the sea and of the Great Lakes, so those waters
 * lie in no state. They suggest a state; a person confirms it.
 *
 * Segment `i` runs from vertex `i` to vertex `i + 1`. Bands of equal height in latitude list the segments
 * that touch them: they need no care at the antimeridian, and answer both what a ray along the parallel
 * crosses and what lies near.
 */
export interface StateLines {
  /** USPS codes; segments name a state by its place here. */
  readonly states: readonly string[];
  /** Degrees, to a metre. */
  readonly longitude: Float32Array;
  readonly latitude: Float32Array;
  /** For each segment, the states on its two sides; `NO_STATE` on one at a coast, on both where a line ends. */
  readonly oneSide: Uint8Array;
  readonly otherSide: Uint8Array;
  /** Band `b` lists `segments[bandStart[b]]` up to but not `segments[bandStart[b + 1]]`. */
  readonly bandStart: Uint32Array;
  readonly segments: Uint16Array;
}

export const NO_STATE = 255;
export const BAND_DEGREES = 0.1;
/** South of every state and territory. */
const FIRST_BAND_LATITUDE = -15;

/** Number of the band that a latitude falls in; outside the data it is negative or past the last band. */
export function bandOf(latitude: number): number {
  return Math.floor((latitude - FIRST_BAND_LATITUDE) / BAND_DEGREES);
}
