/**
 * What a determination needs to know about positions, handed in by whoever runs it: the data behind it is
 * prepared at build time and loaded only when a position is given, so `shared/` reads no file.
 */
export interface Geography {
  /** IANA zone of a position, for example `zoneAt(33.82, -96.57)` is `'America/Chicago'`. */
  zoneAt(latitude: number, longitude: number): string;
  /**
   * The state the position lies in (null: none) and every state within `withinM` metres of it, nearest
   * first, each with the distance in metres from the position to that state's own line.
   */
  statesNear(latitude: number, longitude: number, withinM: number): StatesNear;
}

export interface StatesNear {
  inside: StateDistance | null;
  /** Other states whose line is within the distance asked. */
  near: StateDistance[];
}

export interface StateDistance {
  /** USPS code. */
  state: string;
  /** From the position to the state's line. */
  distanceM: number;
}
