import type { FieldKinds } from './hand-over-profile.js';

interface Branch {
  kind?: string;
  readonly below: Map<string, Branch>;
}

/** Says of a field of a section which kind it is; undefined for one that nobody placed. */
export type Classify = (section: string, path: string) => string | undefined;

/**
 * Finds the kind of a field by its path, where items of lists are named by their ids. A list itself, which holds
 * nothing but ids, is a `key`.
 * @example classifyField(kinds)('people', '/people/p1/birthDate') // 'birth-date'
 */
export function classifyField({ kinds }: FieldKinds): Classify {
  const root: Branch = { below: new Map() };
  for (const { kind, fields } of kinds) for (const field of fields) plant(root, tokensOf(field), kind);
  return (section, path) => {
    let here: Branch | undefined = root;
    for (const token of tokensOf(`${section}:${path}`)) {
      here = here.below.get(token) ?? here.below.get('*');
      if (here === undefined) return undefined;
    }
    return here.kind ?? (here.below.has('*') ? 'key' : undefined);
  };
}

function plant(root: Branch, tokens: readonly string[], kind: string): void {
  let here = root;
  for (const token of tokens) {
    const next = here.below.get(token) ?? { below: new Map<string, Branch>() };
    here.below.set(token, next);
    here = next;
  }
  here.kind = kind;
}

function tokensOf(field: string): string[] {
  return field.replace(':', '').split('/');
}
