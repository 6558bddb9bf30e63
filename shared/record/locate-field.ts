import { jsonPointer } from '../kernel/json-pointer.js';
import { isJsonObject, type JsonObject, type JsonValue } from './json-value.js';

/**
 * The RFC 6901 pointer of a field that is named by the ids of items, in a document that was sent; as far as it goes
 * where the document lacks the field.
 * @example locateField({ people: [{ id: 'p1' }] }, '/people/p1/phone') // '/people/0/phone'
 */
export function locateField(document: JsonObject, path: string): string {
  const tokens: (string | number)[] = [];
  let here: JsonValue | undefined = document;
  for (const token of path.split('/').slice(1)) {
    const name = token.replaceAll('~1', '/').replaceAll('~0', '~');
    if (Array.isArray(here)) {
      const items: readonly JsonValue[] = here;
      const index = items.findIndex((item) => isJsonObject(item) && item['id'] === name);
      if (index === -1) break;
      tokens.push(index);
      here = items[index];
    } else {
      tokens.push(name);
      here = isJsonObject(here) ? here[name] : undefined;
    }
  }
  return jsonPointer(tokens);
}
