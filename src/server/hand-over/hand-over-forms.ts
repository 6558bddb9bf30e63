import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { checkProfiles } from '../../../shared/hand-over/check-profiles.js';
import { type Classify, classifyField } from '../../../shared/hand-over/classify-field.js';
import { type FieldKinds, type Profile, RECIPIENTS } from '../../../shared/hand-over/hand-over-profile.js';
import { listRecordFields } from '../../../shared/wire/list-record-fields.js';
import { projectRoot } from '../platform/project-root.js';

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
export function readHandOverForms(folder = join(projectRoot(), 'forms', 'hand-over')): HandOverForms {
  const kinds = readForm<FieldKinds>(folder, 'fields.json', 'fields.schema.json');
  const profiles = RECIPIENTS.map((recipient) =>
    readForm<Profile>(folder, join('profiles', `${recipient}.json`), 'profile.schema.json'),
  );
  const faults = checkProfiles(listRecordFields(), kinds, profiles);
  if (faults.length > 0) throw new Error(`forms/hand-over cannot be used: ${faults.join(' ')}`);
  return new HandOverForms(kinds, profiles, readFileSync(join(folder, 'packet-record.schema.json'), 'utf8'));
}

function readForm<T>(folder: string, name: string, schema: string): T {
  const parse = (file: string): unknown => JSON.parse(readFileSync(join(folder, file), 'utf8'));
  const validate = new Ajv2020({ strict: false }).compile<T>(parse(schema) as object);
  const form = parse(name);
  if (validate(form)) return form;
  const faults = (validate.errors ?? []).map(
    ({ instancePath, message }) => `${instancePath} ${message ?? ''}`,
  );
  throw new Error(`forms/hand-over/${name} cannot be used: ${faults.join('; ')}`);
}
