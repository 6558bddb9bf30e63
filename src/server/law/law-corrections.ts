import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { correctPack, type CorrectionFile } from '../../../shared/law/correct-pack.js';
import { packCode } from '../../../shared/law/pack-code.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { projectRoot } from '../platform/project-root.js';
import { RulePackError, type RulePackFault } from './rule-pack-error.js';

/** Where a business keeps its corrections: LAW_CORRECTIONS_DIR, else `var/law-corrections`. */
export function correctionsFolder(): string {
  return process.env['LAW_CORRECTIONS_DIR'] ?? join(projectRoot(), 'var', 'law-corrections');
}

/**
 * The packs with the corrections of a folder laid on them, in the order of the names of its files. The shipped files
 * stay as they are; what is corrected is checked like a shipped pack.
 * @throws RulePackError naming every fault of every correction: law that is half corrected is not used
 */
export async function withCorrections(
  packs: readonly RulePack[],
  folder = correctionsFolder(),
): Promise<RulePack[]> {
  const files = existsSync(folder) ? readdirSync(folder).filter((file) => file.endsWith('.json')) : [];
  if (files.length === 0) return [...packs];
  const { checkCorrection, checkCorrected } = await import('./check-correction.js');
  const corrected = new Map(packs.map((pack) => [packCode(pack), pack]));
  const faults: RulePackFault[] = [];
  for (const file of files.sort()) {
    const found = (errors: readonly { pointer: string; detail: string }[]): unknown =>
      faults.push(...errors.map(({ pointer, detail }) => ({ file, pointer, reason: detail })));
    const read = parse(readFileSync(join(folder, file), 'utf8'));
    const errors = checkCorrection(read);
    if (errors.length > 0) {
      found(errors);
      continue;
    }
    const correction = read as CorrectionFile;
    const pack = corrected.get(correction.pack);
    if (pack === undefined) {
      found([{ pointer: '/pack', detail: `no pack is called ${correction.pack}` }]);
      continue;
    }
    const result = correctPack(pack, correction);
    if ('errors' in result) found(result.errors);
    else {
      found(checkCorrected(result.pack));
      corrected.set(correction.pack, result.pack);
    }
  }
  if (faults.length > 0) throw new RulePackError(folder, faults);
  return [...corrected.values()];
}

function parse(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
