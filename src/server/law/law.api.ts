import type { RulePack } from '../../../shared/law/rule-pack.js';
import { compileRulePacks, loadCompiledPacks } from './compiled-packs.js';
import { readConfig } from '../platform/config.js';
import { withCorrections } from './law-corrections.js';
import { dutiesBeside, lawFolder } from './law-folder.js';

export { RulePackError, type RulePackFault } from './rule-pack-error.js';
export type { CompiledPacks } from './rule-pack-source.js';
export { compileRulePacks, loadCompiledPacks, withCorrections };

/**
 * Reads and checks the packs of a folder (by default `forms/law`), the federal one first, then by code, and behind them
 * those on other matters.
 * @throws RulePackError with every fault: file, pointer and reason
 */
export async function readRulePacks(
  directory = lawFolder(),
  duties = dutiesBeside(directory),
): Promise<RulePack[]> {
  const { readPackFolders } = await import('./rule-pack-source.js');
  return readPackFolders(directory, duties).packs;
}

/**
 * The packs in force, from the built document while it is current, in a few milliseconds, with the corrections of the
 * business laid on them.
 */
export async function loadRulePacks(): Promise<RulePack[]> {
  return withCorrections((await loadCompiledPacks()).packs);
}

/** After how many months law is to be read again: LAW_RECHECK_MONTHS. */
export function recheckMonths(): number {
  return readConfig(process.env).decision.recheckMonths;
}
