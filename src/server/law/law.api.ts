import type { RulePack } from '../../../shared/law/rule-pack.js';
import { compileRulePacks, loadCompiledPacks } from './compiled-packs.js';
import { lawFolder } from './law-folder.js';

export { RulePackError, type RulePackFault } from './rule-pack-error.js';
export type { CompiledPacks } from './rule-pack-source.js';
export { compileRulePacks, loadCompiledPacks };

/**
 * Reads and checks the packs of a folder (by default `forms/law`), the federal one first, then by code.
 * @throws RulePackError with every fault: file, pointer and reason
 */
export async function readRulePacks(directory = lawFolder()): Promise<RulePack[]> {
  const { readPackFolder } = await import('./rule-pack-source.js');
  return readPackFolder(directory).packs;
}

/** The packs in force, from the built document while it is current, in a few milliseconds. */
export async function loadRulePacks(): Promise<RulePack[]> {
  return (await loadCompiledPacks()).packs;
}
