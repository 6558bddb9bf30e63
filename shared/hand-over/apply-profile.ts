import { type IncidentRecord, SECTION_NAMES } from '../record/incident-record.js';
import type { JsonObject } from '../record/json-value.js';
import { applySection, type DecidedField } from './apply-section.js';
import type { Classify } from './classify-field.js';
import { findMinors } from './find-minors.js';
import type { Profile } from './hand-over-profile.js';
import { nameOwner } from './name-owner.js';
import type { SenderChoices } from './sender-choices.js';

/** The sections as they leave, and every field with why it goes, is masked or stays. */
export interface AppliedProfile {
  readonly sections: Readonly<Record<string, JsonObject>>;
  readonly fields: readonly DecidedField[];
}

/**
 * Lays a profile over the sections that people write. Nothing leaves that the profile does not let go; names of those
 * who may be under age become initials in every text where the profile says so.
 * @param record with amendments as they stand
 */
export function applyProfile(
  record: IncidentRecord,
  classify: Classify,
  profile: Profile,
  sender: SenderChoices,
): AppliedProfile {
  const names = namesToMask(record, profile);
  const fields: DecidedField[] = [];
  const sections: Record<string, JsonObject> = {};
  for (const section of SECTION_NAMES) {
    const document = record.sections[section] as unknown as JsonObject | undefined;
    if (document === undefined) continue;
    const placed = (path: string) => ({
      kind: classify(section, path),
      owner: nameOwner(record, section, path),
    });
    const applied = applySection({ section, document, placed, names }, profile, sender);
    fields.push(...applied.fields);
    if (applied.document !== undefined) sections[section] = applied.document;
  }
  return { sections, fields };
}

/** Names that leave as initials: `namesToMask(record, insurer)` is empty. */
export function namesToMask(record: IncidentRecord, { minors }: Profile): readonly string[] {
  return minors === 'initials' ? findMinors(record).names : [];
}
