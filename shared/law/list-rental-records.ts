import { BASIS_WORDS } from './name-law-terms.js';
import type { LiveryDuty, RulePack } from './rule-pack.js';

/** What a jurisdiction is known to say of the record that a business keeps of each rental. */
export interface RentalRecordRule {
  /** USPS code. */
  readonly jurisdiction: string;
  readonly name: string;
  /** The rule in words, how long and how it was read; or that it was not read. */
  readonly law: string;
  /** Null where nothing was read. */
  readonly citation: string | null;
}

/**
 * What the law of some states says of rental records, in the order of the packs. These are standing duties: no fact of an
 * occurrence raises them, but an occurrence is when the record is needed and when it gets lost. A state of which nothing
 * was read is listed with that.
 * @param states USPS codes
 * @example listRentalRecords(packs, ['AZ'])[0].law // 'Write down who hired … At least 3 months; from when … not read. …'
 */
export function listRentalRecords(packs: readonly RulePack[], states: readonly string[]): RentalRecordRule[] {
  return packs
    .filter(({ jurisdiction, subject }) => subject === undefined && states.includes(jurisdiction))
    .flatMap(({ jurisdiction, name, liveryDuties }): RentalRecordRule[] => {
      const records = liveryDuties.filter(({ kind }) => kind === 'records');
      if (records.length > 0) {
        return records.map((duty) => ({ jurisdiction, name, law: wordsOf(duty), citation: duty.citation }));
      }
      const law = `Whether ${name} has rentals written down, and kept for how long, was not read here: ask its boating agency.`;
      return [{ jurisdiction, name, law, citation: null }];
    });
}

function wordsOf({ summary, keptFor, citation, basis }: LiveryDuty): string {
  return `${summary} ${keptWords(keptFor)} (${citation}; read ${BASIS_WORDS[basis]}.)`;
}

function keptWords(keptFor: LiveryDuty['keptFor']): string {
  if (keptFor === null || keptFor === undefined) return 'How long it is kept was not read.';
  const time = 'days' in keptFor ? `${keptFor.days} days` : `${keptFor.months} months`;
  return `At least ${time}; from when that counts was not read.`;
}
