import { join } from 'node:path';
import type { FieldError } from '../../../shared/kernel/field-error.js';
import { checkRulePack } from '../../../shared/law/check-rule-pack.js';
import { packCode } from '../../../shared/law/pack-code.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { projectRoot } from '../platform/project-root.js';
import { schemaFile } from './law-folder.js';
import { packReader } from './rule-pack-schema.js';

/** Every fault of a correction as it was written, before it is laid on a pack. */
export function checkCorrection(document: unknown): FieldError[] {
  const file = join(projectRoot(), 'forms', 'law', 'correction.schema.json');
  const reading = packReader(file)(document);
  return 'errors' in reading ? reading.errors : [];
}

/** Every fault of a pack that a correction has made: it must be as sound as a shipped one. */
export function checkCorrected(pack: RulePack): FieldError[] {
  const reading = packReader(schemaFile())(pack);
  return 'errors' in reading ? reading.errors : checkRulePack(pack, `${packCode(pack).toLowerCase()}.json`);
}
