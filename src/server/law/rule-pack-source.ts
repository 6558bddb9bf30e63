import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkRulePack } from '../../../shared/law/check-rule-pack.js';
import type { FieldError } from '../../../shared/kernel/field-error.js';
import { packCode } from '../../../shared/law/pack-code.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { isPackFile, schemaFile } from './law-folder.js';
import { RulePackError, type RulePackFault } from './rule-pack-error.js';
import { packReader, type PackReading } from './rule-pack-schema.js';

/** Rule packs with the version of each: the SHA-256 of its content, whatever the layout of its file. */
export interface CompiledPacks {
  packs: RulePack[];
  /** By code, in hexadecimal. */
  hashes: Record<string, string>;
}

/**
 * Reads and checks every pack of two folders: those of accident reports, the federal one first and the others by code,
 * and behind them those on other matters.
 * @param duties null for none
 * @throws RulePackError with every fault of every file
 */
export function readPackFolders(directory: string, duties: string | null): CompiledPacks {
  const read = packReader(schemaFile());
  const files = [directory, ...(duties === null ? [] : [duties])].flatMap((folder) =>
    readdirSync(folder)
      .filter(isPackFile)
      .map((file) => ({ folder, file })),
  );
  const faults: RulePackFault[] = [];
  const packs = files.flatMap(({ folder, file }) => {
    const reading = readFile(join(folder, file), read);
    const errors =
      'errors' in reading
        ? reading.errors
        : [...checkRulePack(reading.pack, file), ...checkFolder(reading.pack, folder === duties)];
    faults.push(...errors.map(({ pointer, detail }) => ({ file, pointer, reason: detail })));
    return 'pack' in reading ? [reading.pack] : [];
  });
  if (!files.some(({ file }) => file === 'us.json')) {
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
    hashes: Object.fromEntries(packs.map((pack) => [packCode(pack), sha256(JSON.stringify(pack))])),
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

/** A pack in the wrong folder would be taken for law that it is not. */
function checkFolder({ subject }: RulePack, isOfDuties: boolean): FieldError[] {
  if (isOfDuties === (subject !== undefined)) return [];
  const detail = isOfDuties
    ? 'is missing: packs on accident reports lie in the other folder'
    : 'is for packs on other matters, which lie in a folder of their own';
  return [{ pointer: '/subject', detail }];
}

function federalFirst(a: RulePack, b: RulePack): number {
  const [subject = '', other = ''] = [a.subject, b.subject];
  if ((subject === '') !== (other === '')) return subject === '' ? -1 : 1;
  if ((a.jurisdiction === 'US') !== (b.jurisdiction === 'US')) return a.jurisdiction === 'US' ? -1 : 1;
  return packCode(a) < packCode(b) ? -1 : 1;
}

function sha256(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}
