import { join } from 'node:path';
import { projectRoot } from '../platform/project-root.js';

/** Where the rule packs lie: data that people edit. */
export function lawFolder(): string {
  return join(projectRoot(), 'forms', 'law');
}

export function schemaFile(): string {
  return join(lawFolder(), 'rule-pack.schema.json');
}

/** Where the build puts them as one document that starts quickly. */
export function compiledFile(): string {
  return join(projectRoot(), 'dist', 'forms', 'rule-packs.json');
}

/** Every JSON file in the folder but the schema is taken for a pack, so that a misnamed one is reported. */
export function isPackFile(file: string): boolean {
  return file.endsWith('.json') && !file.endsWith('.schema.json');
}
