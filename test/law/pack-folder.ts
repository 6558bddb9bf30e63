import { copyFileSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { RulePack } from '../../shared/law/rule-pack.js';

export const LAW_FOLDER = join(import.meta.dirname, '..', '..', 'forms', 'law');

/** A temporary folder with copies of some packs (by default of all), to be changed by a test. */
export function copyPacks(
  files = readdirSync(LAW_FOLDER).filter((file) => /^[a-z]{2}\.json$/.test(file)),
): string {
  const folder = mkdtempSync(join(tmpdir(), 'rule-packs-'));
  for (const file of files) copyFileSync(join(LAW_FOLDER, file), join(folder, file));
  return folder;
}

export function readPack(file: string, folder = LAW_FOLDER): RulePack {
  return JSON.parse(readFileSync(join(folder, file), 'utf8')) as RulePack;
}

export function writePack(folder: string, file: string, pack: unknown): void {
  writeFileSync(join(folder, file), JSON.stringify(pack));
}
