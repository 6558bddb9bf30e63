import type { HeldByAgencyStep } from './service-step.js';

/**
 * What is still to be asked for while an agency holds a craft. A hold is recorded without it all the same: an officer
 * waits for nobody's form.
 * @example listCustodyGaps({ ...held, receipt: null })[0] // 'Ask for a receipt, and enter its number.'
 */
export function listCustodyGaps(held: HeldByAgencyStep): string[] {
  const gaps: string[] = [];
  if (held.receipt === null) gaps.push('Ask for a receipt, and enter its number.');
  if (held.officer === null) gaps.push('Enter the name of the officer.');
  if (held.photographs.length === 0) gaps.push('Photographs were not taken first: ask to take them now.');
  if (held.hourMeter === null) gaps.push('Read the hour meter, or ask the agency for its reading.');
  if (held.keptWhere === null) gaps.push('Ask where the craft is kept.');
  return gaps;
}
