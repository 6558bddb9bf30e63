import { fieldLabel } from '../../../shared/record/field-words/tell-field.js';
import { isJsonObject, type JsonObject, type JsonValue } from '../../../shared/record/json-value.js';
import { language } from '../words/speak.js';

/** What things of a list are known by, the first that stands there. */
const NAMES = ['name', 'unitName', 'what', 'who', 'to', 'nature'];

/**
 * A path as a reader says it: each thing of a list by its name where it has one, then the field.
 * @param document the section as it stands; a thing that is no longer there is called by its id
 * @example tellPath('people', '/people/p1/outcome', { people: [{ id: 'p1', name: 'Ann' }] }) // 'Ann: What became of them'
 */
export function tellPath(section: string, path: string, document: JsonObject): string {
  const things: string[] = [];
  let at: JsonValue | undefined = document;
  let done = '';
  for (const token of path.split('/').slice(1)) {
    const ofThing = done === '' ? undefined : fieldLabel(section, `${done}/*`, language());
    const isThing = Array.isArray(at) || (at === undefined && ofThing !== undefined);
    at = stepInto(at, token);
    done += `/${token}`;
    if (isThing && done !== path) things.push(nameOf(at) ?? `${ofThing ?? ''} ${token}`.trim());
  }
  const name = fieldLabel(section, path, language()) ?? path.slice(path.lastIndexOf('/') + 1);
  return [...things, name].join(': ');
}

function stepInto(at: JsonValue | undefined, token: string): JsonValue | undefined {
  if (Array.isArray(at)) {
    return (at as readonly JsonValue[]).find((one) => isJsonObject(one) && one['id'] === token);
  }
  return isJsonObject(at) ? at[token] : undefined;
}

/** What a thing of a list is called; undefined where nothing of it says so. */
export function nameOf(thing: JsonValue | undefined): string | undefined {
  if (!isJsonObject(thing)) return undefined;
  return NAMES.map((name) => thing[name]).find((name) => typeof name === 'string');
}
