import { valueOf } from '../call/known.js';
import type { ContactParty } from '../record/account-sections.js';
import type { IncidentRecord } from '../record/incident-record.js';
import { readSituation } from './read-situation.js';

/** What may be sent to somebody concerned, and why not more. */
export interface Writing {
  /** A mail that goes by itself. */
  readonly automatic: boolean;
  /** A form or notice that a person sends. */
  readonly notice: boolean;
  readonly why: string;
}

const FREE: Writing = { automatic: true, notice: true, why: '' };
const BEREAVED: Writing = {
  automatic: false,
  notice: false,
  why: 'Somebody died or is missing: the family gets no notice. Counsel says what is written to them.',
};
const LAWYER: Writing = {
  automatic: false,
  notice: true,
  why: 'A lawyer speaks for them, or may: write to the lawyer, by a person.',
};

/**
 * What may be written to a renter or to family. Renters are often family of whom they rode with, so a death or a
 * disappearance stops notices to both. A lawyer who speaks for either, or for nobody that was named, stops automatic
 * mail to both; that nobody is sure of it does too.
 * @example mayWriteTo(recordOfADeath, 'family').notice // false
 */
export function mayWriteTo(record: IncidentRecord, party: 'renter' | 'family'): Writing {
  const { facts } = readSituation(record);
  if (facts.bereaved === 'true') return BEREAVED;
  if (facts.bereaved === 'unknown' && party === 'family') {
    return { ...BEREAVED, why: 'It is not ruled out that somebody died or is missing: call, do not write.' };
  }
  const theirs: readonly (ContactParty | undefined)[] = ['renter', 'family', 'lawyer', undefined];
  const mayHaveLawyer = (record.sections.contacts?.contacts ?? []).some(
    (contact) =>
      theirs.includes(contact.party) &&
      (contact.party === 'lawyer' || (valueOf(contact.lawyerSpeaks) ?? 'no') !== 'no'),
  );
  return mayHaveLawyer ? LAWYER : FREE;
}
