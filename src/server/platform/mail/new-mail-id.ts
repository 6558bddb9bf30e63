import { randomBytes } from 'node:crypto';

/** The last one given in this process. */
let last = { ms: 0, turn: 0 };

const TURNS = 0x1000;

/**
 * An id by which mails stand in the order in which they were queued: a UUID of version 7 with a counter for those of the
 * same millisecond (RFC 9562, 5.7 and 6.2, method 1).
 * @param now RFC 3339
 */
export function newMailId(now: string): string {
  const ms = Math.max(Date.parse(now), last.ms);
  const turn = ms === last.ms ? last.turn + 1 : 0;
  last = turn < TURNS ? { ms, turn } : { ms: ms + 1, turn: 0 };
  const time = last.ms.toString(16).padStart(12, '0');
  const chance = randomBytes(8);
  chance[0] = ((chance[0] ?? 0) & 0x3f) | 0x80;
  const rest = chance.toString('hex');
  const counter = last.turn.toString(16).padStart(3, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7${counter}-${rest.slice(0, 4)}-${rest.slice(4)}`;
}
