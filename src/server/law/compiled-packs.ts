import { mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { compiledFile, dutiesFolder, isPackFile, lawFolder, schemaFile } from './law-folder.js';
import type { CompiledPacks } from './rule-pack-source.js';

/** For the build: checks every pack of the folders and writes them as one document. */
export async function compileRulePacks(
  outFile = compiledFile(),
  directory = lawFolder(),
  duties: string | null = directory === lawFolder() ? dutiesFolder() : null,
): Promise<void> {
  const { readPackFolders } = await import('./rule-pack-source.js');
  mkdirSync(dirname(outFile), { recursive: true });
  writeFileSync(outFile, JSON.stringify(readPackFolders(directory, duties)));
}

/**
 * The compiled document when it is at least as new as everything in the folders and the schema, else the
 * sources, checked again: a changed pack is never silently left unread. Only the second case costs the loading
 * of the schema validator.
 */
export async function loadCompiledPacks(
  compiled = compiledFile(),
  directory = lawFolder(),
  duties: string | null = directory === lawFolder() ? dutiesFolder() : null,
): Promise<CompiledPacks> {
  const folders = [directory, ...(duties === null ? [] : [duties])];
  if (isCurrent(compiled, folders)) return JSON.parse(readFileSync(compiled, 'utf8')) as CompiledPacks;
  const { readPackFolders } = await import('./rule-pack-source.js');
  return readPackFolders(directory, duties);
}

/** A folder's own time changes when a pack is added, renamed or removed. */
function isCurrent(compiled: string, folders: readonly string[]): boolean {
  const written = statSync(compiled, { throwIfNoEntry: false })?.mtimeMs;
  if (written === undefined) return false;
  const packs = folders.flatMap((folder) =>
    readdirSync(folder)
      .filter(isPackFile)
      .map((file) => join(folder, file)),
  );
  return [...folders, schemaFile(), ...packs].every((path) => statSync(path).mtimeMs <= written);
}
