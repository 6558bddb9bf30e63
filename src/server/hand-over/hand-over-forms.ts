import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkProfiles } from '../../../shared/hand-over/check-profiles.js';
import { type Classify, classifyField } from '../../../shared/hand-over/classify-field.js';
import { type FieldKinds, type Profile, RECIPIENTS } from '../../../shared/hand-over/hand-over-profile.js';
import { listRecordFields } from '../../../shared/wire/list-record-fields.js';
import { projectRoot } from '../platform/project-root.js';
import { readForm } from '../platform/read-form.js';

const SCHEMA = join(projectRoot(), 'forms', 'hand-over', 'packet-record.schema.json');

/** What leaves the house for whom, from `forms/hand-over`. */
export class HandOverForms {
  readonly classify: Classify;

  constructor(
    readonly kinds: FieldKinds,
    readonly profiles: readonly Profile[],
    /** JSON Schema of the record as it stands in a packet. */
    readonly recordSchema: string,
  ) {
    this.classify = classifyField(kinds);
  }
}

/**
 * @throws Error when a file does not keep to its schema, or a field of the record is decided by nobody: the service must
 * not start while it is open what leaves
 */
export function readHandOverForms(): HandOverForms {
  const kinds = readForm<FieldKinds>('hand-over/fields');
  const profiles = RECIPIENTS.map((recipient) =>
    readForm<Profile>(`hand-over/profiles/${recipient}`, 'hand-over/profile'),
  );
  const faults = checkProfiles(listRecordFields(), kinds, profiles);
  if (faults.length > 0) throw new Error(`forms/hand-over cannot be used: ${faults.join(' ')}`);
  return new HandOverForms(kinds, profiles, readFileSync(SCHEMA, 'utf8'));
}
