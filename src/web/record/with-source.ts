import { isJsonObject, type JsonObject, type JsonValue } from '../../../shared/record/json-value.js';
import type { SectionDraft, Source } from './section-draft.js';

/** The draft with how its writer knows things; facts that have been given no source yet are given this one. */
export function withSource(draft: SectionDraft, source: Source): SectionDraft {
  const { known, by } = source;
  const given = { known, ...(by.trim() !== '' && { by: by.trim() }) };
  const before = draft.source;
  const fill = (value: JsonValue): JsonValue => {
    if (Array.isArray(value)) return (value as readonly JsonValue[]).map(fill);
    if (!isJsonObject(value)) return value;
    // While the name is typed, facts of this draft follow it; facts of the record stay as they are known.
    if ('value' in value && (!('known' in value) || follows(value))) {
      const { known: old, by: name, ...rest } = value;
      void [old, name];
      return { ...rest, ...given };
    }
    return Object.fromEntries(Object.entries(value).map(([name, part]) => [name, fill(part)]));
  };
  const inBase = new Set(factsOf(draft.base));
  const follows = (fact: JsonObject): boolean =>
    before !== undefined &&
    fact['known'] === before.known &&
    (fact['by'] ?? '') === before.by.trim() &&
    !inBase.has(JSON.stringify(fact));
  return { ...draft, source, document: fill(draft.document) as JsonObject };
}

function factsOf(value: JsonValue): string[] {
  if (Array.isArray(value)) return (value as readonly JsonValue[]).flatMap(factsOf);
  if (!isJsonObject(value)) return [];
  return 'known' in value ? [JSON.stringify(value)] : Object.values(value).flatMap(factsOf);
}
