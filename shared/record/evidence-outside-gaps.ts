import { readInstant } from '../time/read-instant.js';
import type { OutsideEvidence } from './evidence-section.js';

const OPEN: readonly OutsideEvidence['state'][] = ['not-asked', 'asked', 'promised'];

/**
 * What is to be done about evidence that somebody else holds, before it is gone.
 * @param now milliseconds since the Unix epoch
 * @example listOutsideEvidenceGaps({ id: 'o1', version: 1, kind: 'dock-camera', state: 'not-asked' }, now)[0]
 * // 'Nobody has asked for it yet.'
 */
export function listOutsideEvidenceGaps(item: OutsideEvidence, now: number): string[] {
  const { state, holder, overwrittenAt, askedAt, address, account, seenAt, finder } = item;
  const gaps: string[] = [];
  if (state === 'not-asked') gaps.push('Nobody has asked for it yet.');
  if (holder === undefined && item.kind !== 'posted-video') gaps.push('Nobody says who holds it.');
  if (OPEN.includes(state)) {
    if (overwrittenAt === undefined) gaps.push('Ask until when it is kept: many recordings are overwritten.');
    else if (readInstant(overwrittenAt) <= now)
      gaps.push('It may be overwritten by now: ask whether it is still there.');
  }
  if (state !== 'not-asked' && askedAt === undefined) gaps.push('Nobody says when it was asked for.');
  if (item.kind === 'posted-video') {
    if (address === undefined) gaps.push('Keep the address of what was posted.');
    if (account === undefined) gaps.push('Keep the account that posted it.');
    if (seenAt === undefined || finder === undefined) gaps.push('Keep who saw it, and when.');
  }
  return gaps;
}
