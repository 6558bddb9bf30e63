export type Notation = 'decimal-degrees' | 'degrees-minutes' | 'degrees-minutes-seconds' | 'usng';

/** A position read from what somebody wrote or said, in degrees (WGS 84), south and west negative. */
export interface PositionReading {
  ok: true;
  latitude: number;
  longitude: number;
  notation: Notation;
  /**
   * Metres of one step of the coarsest number given. In USNG it is the side of the square, and the position
   * is the square's south-west corner: what was meant lies up to that far north and east of it.
   */
  precisionM: number;
  /** What a person should look at before relying on the position. */
  remarks: PositionRemark[];
}

export interface PositionRemark {
  code: 'longitude-first' | 'perhaps-swapped' | 'perhaps-west' | 'outside-united-states';
  detail: string;
}

/** Why no position could be read, and what to write instead. */
export interface PositionFault {
  ok: false;
  code:
    | 'empty'
    | 'unreadable'
    | 'ambiguous'
    | 'sign-and-letter'
    | 'latitude-out-of-range'
    | 'longitude-out-of-range'
    | 'minutes-out-of-range'
    | 'seconds-out-of-range'
    | 'grid-zone-missing'
    | 'grid-digits-uneven'
    | 'no-such-grid-square';
  detail: string;
}

/** `fault('empty', 'Give a position.')` is `{ ok: false, code: 'empty', detail: 'Give a position.' }`. */
export function fault(code: PositionFault['code'], detail: string): PositionFault {
  return { ok: false, code, detail };
}
