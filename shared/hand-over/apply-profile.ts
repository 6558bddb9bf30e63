import { flattenSection } from '../record/flatten-section.js';
import { findRefusedNumber } from '../record/find-refused-number.js';
import { type IncidentRecord, SECTION_NAMES, type SectionName } from '../record/incident-record.js';
import { type JsonObject, type JsonValue, sameJson } from '../record/json-value.js';
import type { Classify } from './classify-field.js';
import { decideItem, type Verdict } from './decide-item.js';
import { findMinors } from './find-minors.js';
import type { Profile } from './hand-over-profile.js';
import { keepFields } from './keep-fields.js';
import { maskNames, maskValue } from './mask-value.js';
import { nameOwner } from './name-owner.js';
import type { SenderChoices } from './sender-choices.js';

/** A field with what becomes of it. */
export interface DecidedField {
  readonly section: SectionName;
  readonly path: string;
  readonly kind: string | undefined;
  readonly verdict: Verdict;
  /** As it leaves; absent where it stays. */
  readonly value?: JsonValue;
}

/** The sections as they leave, and every field with why it goes, is masked or stays. */
export interface AppliedProfile {
  readonly sections: Readonly<Record<string, JsonObject>>;
  readonly fields: readonly DecidedField[];
}

/**
 * Lays a profile over a record. Nothing leaves that the profile does not let go; names of those who may be under age
 * become initials in every text where the profile says so, and a card or Social Security number leaves for nobody.
 * @param record with amendments as they stand
 */
export function applyProfile(
  record: IncidentRecord,
  classify: Classify,
  profile: Profile,
  sender: SenderChoices,
): AppliedProfile {
  const names = profile.minors === 'initials' ? findMinors(record).names : [];
  const fields: DecidedField[] = [];
  const sections: Record<string, JsonObject> = {};
  for (const section of SECTION_NAMES) {
    const document = record.sections[section] as unknown as JsonObject | undefined;
    if (document === undefined) continue;
    const decided = [...flattenSection(document)].map(([path, value]): DecidedField => {
      const kind = classify(section, path);
      const owner = nameOwner(record, section, path);
      const verdict = decideItem({ kind, id: `${section}:${path}`, owner }, profile, sender);
      return { section, path, kind, ...leave(verdict, value, names) };
    });
    const lines = decided.some(tells) ? decided : decided.map(withoutKey);
    fields.push(...lines);
    const kept = new Map(
      lines.flatMap(({ path, value }) => (value === undefined ? [] : [[path, value] as const])),
    );
    if (kept.size > 0) sections[section] = keepFields(document, kept);
  }
  return { sections, fields };
}

/** Whether it says more than that there is something. */
function tells({ kind, value }: DecidedField): boolean {
  return kind !== 'key' && value !== undefined;
}

function withoutKey({ section, path, kind, verdict }: DecidedField): DecidedField {
  if (verdict.does === 'stays') return { section, path, kind, verdict };
  return { section, path, kind, verdict: { does: 'stays', reason: BARE, by: 'profile' } };
}

/** The value as it leaves; a masking that something needs whatever the profile says is said so. */
function leave(
  verdict: Verdict,
  value: JsonValue,
  names: readonly string[],
): Pick<DecidedField, 'verdict' | 'value'> {
  if (verdict.does === 'stays') return { verdict };
  if (findRefusedNumber(JSON.stringify(value)) !== null) {
    return { verdict: { does: 'stays', reason: REFUSED, by: 'profile' } };
  }
  if (verdict.does === 'masked') return { verdict, value: maskNames(names, maskValue(verdict.how, value)) };
  const masked = verdict.by === 'override' ? value : maskNames(names, value);
  if (sameJson(masked, value)) return { verdict, value };
  return {
    verdict: { does: 'masked', how: 'initials', reason: MAY_BE_A_CHILD, by: 'profile' },
    value: masked,
  };
}

const REFUSED = 'It holds a card or Social Security number, which leaves for nobody.';
const MAY_BE_A_CHILD = 'Whoever is not known to be of age is named by initials.';
const BARE = 'Nothing of this section leaves, and so its bare list does not.';
