import type { HowKnown, Known } from '../call/known.js';
import { tellTime } from './tell-value.js';

const HOW: Readonly<Record<HowKnown, readonly [withName: string, without: string]>> = {
  saw: ['seen by', 'seen by us'],
  told: ['as told by', 'as told'],
  'read-off': ['read off', 'read off'],
  computed: ['computed by', 'computed'],
};

/**
 * Where a fact came from, in words.
 * @example tellSource({ value: 3, known: 'told', by: 'Ann' }, 'America/Chicago') // 'as told by Ann'
 */
export function tellSource({ known, by, learnedAt }: Known<unknown>, timeZone: string): string {
  const [withName, without] = HOW[known];
  const source = by === undefined ? without : `${withName} ${by}`;
  return learnedAt === undefined ? source : `${source}, ${tellTime(learnedAt, timeZone)}`;
}
