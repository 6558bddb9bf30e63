import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../platform/project-root.js';

/** Where the rule packs lie: data that people edit. */
export function lawFolder(): string {
  return join(projectRoot(), 'forms', 'law');
}

/** Where the packs on other matters lie. */
export function dutiesFolder(): string {
  return join(projectRoot(), 'forms', 'duties');
}

/**
 * The packs on other matters that go with a folder of packs: those of its own folder `duties`. A folder that has none
 * goes with those that were shipped, so that a business with packs of its own loses no duty.
 */
export function dutiesBeside(directory: string): string {
  const own = join(directory, 'duties');
  return existsSync(own) ? own : dutiesFolder();
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
