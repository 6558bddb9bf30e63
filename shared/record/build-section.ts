import type { Fields } from './flatten-section.js';
import type { JsonObject, JsonValue } from './json-value.js';

interface Branch {
  value?: JsonValue;
  members: Map<string, Branch>;
}

/**
 * The section that has these fields: `buildSection(flattenSection(document))` is the document, but for objects in it
 * that hold nothing.
 * @example buildSection(new Map([['/people', ['p1']], ['/people/p1/id', 'p1']])) // { people: [{ id: 'p1' }] }
 */
export function buildSection(fields: Fields): JsonObject {
  const root: Branch = { members: new Map() };
  for (const [path, value] of fields) branchAt(root, path).value = value;
  return objectOf(root);
}

function branchAt(root: Branch, path: string): Branch {
  let branch = root;
  for (const token of path.split('/').slice(1)) {
    const name = token.replaceAll('~1', '/').replaceAll('~0', '~');
    const next = branch.members.get(name) ?? { members: new Map<string, Branch>() };
    branch.members.set(name, next);
    branch = next;
  }
  return branch;
}

function valueOf({ value, members }: Branch): JsonValue {
  if (members.size === 0) return value ?? null;
  if (!Array.isArray(value)) return objectOf({ members });
  return value.flatMap((id: JsonValue) => {
    const item = typeof id === 'string' ? members.get(id) : undefined;
    return item === undefined ? [] : [objectOf(item)];
  });
}

/** From entries, so that a member called `__proto__` is one like any other. */
function objectOf({ members }: Branch): JsonObject {
  return Object.fromEntries([...members].map(([name, branch]) => [name, valueOf(branch)]));
}
