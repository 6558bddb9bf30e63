import { readdirSync, readFileSync } from 'node:fs';

const folder = new URL('../../fixtures/facts/', import.meta.url);

export interface Refusal {
  /** `schema`: the schema says no too; `classes`: the schema says yes; `both`: some faults of each kind. */
  readonly refusedBy: 'schema' | 'classes' | 'both';
  readonly pointers: readonly string[];
}

/** Names and documents of a folder of fixtures. */
export function factDocuments(kind: 'good' | 'bad'): [name: string, document: unknown][] {
  const files = readdirSync(new URL(`${kind}/`, folder)).filter((file) => file.endsWith('.json'));
  return files.map((file) => [file.replace('.json', ''), readJson(`${kind}/${file}`)]);
}

/** What is expected of each bad document. */
export const refusals = readJson('bad-pointers.json') as Readonly<Record<string, Refusal>>;

function readJson(path: string): unknown {
  return JSON.parse(readFileSync(new URL(path, folder), 'utf8'));
}
