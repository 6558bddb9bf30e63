import type { RulePack } from './rule-pack.js';

/**
 * What a pack is called by, in capitals: its jurisdiction, with its subject where it has one.
 * @example packCode({ jurisdiction: 'US', subject: 'oil-discharge' }) // 'US-OIL-DISCHARGE'
 */
export function packCode({ jurisdiction, subject }: Pick<RulePack, 'jurisdiction' | 'subject'>): string {
  return subject === undefined ? jurisdiction : `${jurisdiction}-${subject.toUpperCase()}`;
}
