import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { compiledFile, isPackFile, lawFolder, schemaFile } from './law-folder.js';
import type { CompiledPacks } from './rule-pack-source.js';

/** For the build: checks every pack of a folder and writes them as one document. */
export async function compileRulePacks(outFile = compiledFile(), directory = lawFolder()): Promise<void> {
  const { readPackFolder } = await import('./rule-pack-source.js');
  mkdirSync(dirname(outFile), { recursive: true });
  writeFileSync(outFile, JSON.stringify(readPackFolder(directory)));
}

/**
 * The compiled document when it is at least as new as everything in `directory` and the schema, else the
 * sources, checked again: a changed pack is never silently left unread. Only the second case costs the loading
 * of the schema validator.
 */
export async function loadCompiledPacks(
  compiled = compiledFile(),
  directory = lawFolder(),
): Promise<CompiledPacks> {
  if (isCurrent(compiled, directory)) return JSON.parse(readFileSync(compiled, 'utf8')) as CompiledPacks;
  const { readPackFolder } = await import('./rule-pack-source.js');
  return readPackFolder(directory);
}

/** The folder's own time changes when a pack is added, renamed or removed. */
function isCurrent(compiled: string, directory: string): boolean {
  const written = statSync(compiled, { throwIfNoEntry: false })?.mtimeMs;
  if (written === undefined) return false;
  const packs = readdirSync(directory).filter(isPackFile);
  return [directory, schemaFile(), ...packs.map((file) => join(directory, file))].every(
    (path) => statSync(path).mtimeMs <= written,
  );
}
