import { readInstant } from '../time/read-instant.js';
import type { CustodyItem } from './evidence-section.js';

/**
 * What somebody on the other side would ask about how a thing was kept: who had it when, without a hole. The log is
 * taken as it is entered, gaps and all.
 * @example listEvidenceCustodyGaps({ id: 'i1', version: 1, what: 'Lanyard' })[0]
 * // 'Nobody says where it was found.'
 */
export function listEvidenceCustodyGaps(item: CustodyItem): string[] {
  const { foundWhere, foundAt, foundBy, keptWhere, seal, photographs = [], handOvers = [] } = item;
  const gaps: string[] = [];
  if (foundWhere === undefined) gaps.push('Nobody says where it was found.');
  if (foundAt === undefined) gaps.push('Nobody says when it was found.');
  if (foundBy === undefined) gaps.push('Nobody says who found it.');
  if (photographs.length === 0) gaps.push('There is no photograph of it as it was found.');
  if (keptWhere === undefined && handOvers.length === 0) gaps.push('Nobody says where it is kept.');
  if (seal === undefined && handOvers.every((one) => one.seal === undefined)) {
    gaps.push('It was never sealed.');
  }
  return [...gaps, ...chainGaps(item)];
}

function chainGaps({ foundBy, foundAt, handOvers = [] }: CustodyItem): string[] {
  const gaps: string[] = [];
  let [holder, since] = [foundBy, foundAt];
  for (const { from, to, at } of handOvers) {
    if (holder !== undefined && !isSame(holder, from)) {
      gaps.push(`Nobody says how it came from ${holder} to ${from}.`);
    }
    if (since !== undefined && readInstant(at) < readInstant(since)) {
      gaps.push(
        `${from} handed it to ${to} before the entry above says that ${from} had it: which time is off?`,
      );
    }
    [holder, since] = [to, at];
  }
  return gaps;
}

function isSame(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}
