import type { RulePack } from '../../../shared/law/rule-pack.js';
import { compilePacks, loadPacks } from './compiled-packs.js';
import { compiledFile, lawFolder } from './law-folder.js';
import type { CompiledPacks } from './rule-pack-source.js';

export { RulePackError, type RulePackFault } from './rule-pack-error.js';
export type { CompiledPacks };

/**
 * Reads and checks the packs of a folder (by default `forms/law`), the federal one first, then by code.
 * @throws RulePackError with every fault: file, pointer and reason
 */
export async function readRulePacks(directory = lawFolder()): Promise<RulePack[]> {
  const { readPackFolder } = await import('./rule-pack-source.js');
  return readPackFolder(directory).packs;
}

/** For the build: checks `forms/law` and writes it as one document. */
export function compileRulePacks(outFile = compiledFile()): Promise<void> {
  return compilePacks(lawFolder(), outFile);
}

/** The packs in force, from the built document while it is current, in a few milliseconds. */
export async function loadRulePacks(): Promise<RulePack[]> {
  return (await loadCompiledPacks()).packs;
}

/** The same with the version of each, to be kept beside a determination. */
export function loadCompiledPacks(): Promise<CompiledPacks> {
  return loadPacks(lawFolder(), compiledFile());
}
