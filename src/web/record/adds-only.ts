import { altersWords } from '../../../shared/record/check-amendment.js';
import { findChanges } from '../../../shared/record/find-changes.js';
import type { JsonObject } from '../../../shared/record/json-value.js';

/** Whether a section only gains words: then nobody has to say why. */
export function addsOnly(before: JsonObject, after: JsonObject): boolean {
  return !altersWords(findChanges(before, after));
}
