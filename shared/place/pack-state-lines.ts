import type { StateLines } from './state-lines.js';

const HEADER_COUNTS = 4;

/**
 * State lines as one run of bytes, to be written when the project is built and read without decoding:
 * parsing the same as JSON takes many times longer than a whole determination. Numbers are little-endian,
 * as in every browser and on every machine that Node runs on. First the counts (vertices, band starts,
 * band entries, states), then the arrays, those of wide numbers first so that each is aligned, and last
 * the states' two letters each.
 */
export function packStateLines(lines: StateLines): Uint8Array<ArrayBuffer> {
  const counts = [lines.latitude, lines.bandStart, lines.segments, lines.states].map((part) => part.length);
  const letters = Uint8Array.from(lines.states.join(''), (letter) => letter.charCodeAt(0));
  const parts = [
    Uint32Array.from(counts),
    lines.longitude,
    lines.latitude,
    lines.bandStart,
    lines.segments,
    lines.oneSide,
    lines.otherSide,
    letters,
  ];
  const bytes = new Uint8Array(parts.reduce((sum, part) => sum + part.byteLength, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(new Uint8Array(part.buffer, part.byteOffset, part.byteLength), at);
    at += part.byteLength;
  }
  return bytes;
}

/**
 * The lines in what `packStateLines` made, as views on a copy of it. Bytes of another length than their
 * counts say throw RangeError: a file cut short must not find fewer states.
 */
export function unpackStateLines(packed: Uint8Array): StateLines {
  const { buffer } = new Uint8Array(packed);
  const [vertices = 0, starts = 0, entries = 0, states = 0] = new Uint32Array(buffer, 0, HEADER_COUNTS);
  let at = HEADER_COUNTS * Uint32Array.BYTES_PER_ELEMENT;
  const take = (count: number, bytesEach: number): number => {
    const start = at;
    at += count * bytesEach;
    return start;
  };
  const lines = {
    longitude: new Float32Array(buffer, take(vertices, 4), vertices),
    latitude: new Float32Array(buffer, take(vertices, 4), vertices),
    bandStart: new Uint32Array(buffer, take(starts, 4), starts),
    segments: new Uint16Array(buffer, take(entries, 2), entries),
    oneSide: new Uint8Array(buffer, take(vertices, 1), vertices),
    otherSide: new Uint8Array(buffer, take(vertices, 1), vertices),
  };
  const letters = String.fromCharCode(...new Uint8Array(buffer, take(states, 2), states * 2));
  if (at !== buffer.byteLength)
    throw new RangeError(`State lines: ${buffer.byteLength} bytes, ${at} expected.`);
  return { ...lines, states: letters.match(/../g) ?? [] };
}
