import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkRulePack } from '../../../shared/law/check-rule-pack.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { isPackFile, schemaFile } from './law-folder.js';
import { RulePackError, type RulePackFault } from './rule-pack-error.js';
import { packReader, type PackReading } from './rule-pack-schema.js';

/** Rule packs with the version of each: the SHA-256 of its content, whatever the layout of its file. */
export interface CompiledPacks {
  packs: RulePack[];
  /** By jurisdiction, in hexadecimal. */
  hashes: Record<string, string>;
}

/**
 * Reads and checks every pack in a folder, the federal one first and the others by code.
 * @throws RulePackError with every fault of every file
 */
export function readPackFolder(directory: string): CompiledPacks {
  const read = packReader(schemaFile());
  const files = readdirSync(directory).filter(isPackFile);
  const faults: RulePackFault[] = [];
  const packs = files.flatMap((file) => {
    const reading = readFile(join(directory, file), read);
    const errors = 'errors' in reading ? reading.errors : checkRulePack(reading.pack, file);
    faults.push(...errors.map(({ pointer, detail }) => ({ file, pointer, reason: detail })));
    return 'pack' in reading ? [reading.pack] : [];
  });
  if (!files.includes('us.json')) {
    faults.push({
      file: 'us.json',
      pointer: '',
      reason: 'is missing: the federal rule is always determined',
    });
  }
  if (faults.length > 0) throw new RulePackError(directory, faults);
  packs.sort(federalFirst);
  return {
    packs,
    hashes: Object.fromEntries(packs.map((pack) => [pack.jurisdiction, sha256(JSON.stringify(pack))])),
  };
}

function readFile(path: string, read: (document: unknown) => PackReading): PackReading {
  const text = readFileSync(path, 'utf8');
  try {
    return read(JSON.parse(text));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return { errors: [{ pointer: '', detail: `is not JSON: ${error.message}` }] };
  }
}

function federalFirst(a: RulePack, b: RulePack): number {
  if (a.jurisdiction === 'US') return -1;
  if (b.jurisdiction === 'US') return 1;
  return a.jurisdiction < b.jurisdiction ? -1 : 1;
}

function sha256(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
