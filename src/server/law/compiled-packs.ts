import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { isPackFile, schemaFile } from './law-folder.js';
import type { CompiledPacks } from './rule-pack-source.js';

/** Checks every pack in `directory` and writes them as one document. */
export async function compilePacks(directory: string, outFile: string): Promise<void> {
  const { readPackFolder } = await import('./rule-pack-source.js');
  mkdirSync(dirname(outFile), { recursive: true });
  writeFileSync(outFile, JSON.stringify(readPackFolder(directory)));
}

/**
 * The compiled document when it is at least as new as everything in `directory` and the schema, else the
 * sources, checked again: a changed pack is never silently left unread. Only the second case costs the loading
 * of the schema validator.
 */
export async function loadPacks(directory: string, compiled: string): Promise<CompiledPacks> {
  if (isCurrent(directory, compiled)) return JSON.parse(readFileSync(compiled, 'utf8')) as CompiledPacks;
  const { readPackFolder } = await import('./rule-pack-source.js');
  return readPackFolder(directory);
}

/** The folder's own time changes when a pack is added, renamed or removed. */
function isCurrent(directory: string, compiled: string): boolean {
  const written = statSync(compiled, { throwIfNoEntry: false })?.mtimeMs;
  if (written === undefined) return false;
  const packs = readdirSync(directory).filter(isPackFile);
  return [directory, schemaFile(), ...packs.map((file) => join(directory, file))].every(
    (path) => statSync(path).mtimeMs <= written,
  );
}
