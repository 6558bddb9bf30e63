import type { FieldError } from '../kernel/field-error.js';
import { buildSection } from './build-section.js';
import { flattenSection } from './flatten-section.js';
import { sameJson, type JsonObject, type JsonValue } from './json-value.js';
import { locateField } from './locate-field.js';

export type Addition =
  | { readonly ok: true; readonly document: JsonObject }
  | { readonly ok: false; readonly errors: FieldError[] };

/**
 * A section with what is added to it: new fields, and new items of lists behind those that are there. Nothing that
 * stands there is altered, so that somebody who cannot see the section may add to it, in any order and more than once.
 * @example
 * addFields({ entries: [{ id: 'e1' }] }, { entries: [{ id: 'e2' }] })
 * // { ok: true, document: { entries: [{ id: 'e1' }, { id: 'e2' }] } }
 */
export function addFields(current: JsonObject, addition: JsonObject): Addition {
  const fields = flattenSection(current);
  const errors: FieldError[] = [];
  for (const [path, value] of flattenSection(addition)) {
    const there = fields.get(path);
    if (there === undefined) fields.set(path, value);
    else if (isList(there) && isList(value)) fields.set(path, [...there, ...missingFrom(there, value)]);
    else if (!sameJson(there, value)) {
      errors.push({
        pointer: locateField(addition, path),
        detail: 'Something else stands there already: an addition alters nothing, so send it as a change.',
      });
    }
  }
  return errors.length > 0 ? { ok: false, errors } : { ok: true, document: buildSection(fields) };
}

function isList(value: JsonValue): value is readonly JsonValue[] {
  return Array.isArray(value);
}

function missingFrom(there: readonly JsonValue[], added: readonly JsonValue[]): JsonValue[] {
  return added.filter((one) => !there.some((other) => sameJson(one, other)));
}
