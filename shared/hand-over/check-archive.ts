import {
  type Entry,
  ERR_INVALID_CRC32,
  type FileEntry,
  type Reader,
  ZipReader,
} from '@zip.js/zip.js/lib/zip-core-native.js';
import type { LogHead } from '../proof/merkle-log.js';
import { type RunningSha256, startSha256 } from '../proof/start-sha256.js';
import { ArchiveContent } from './archive-content.js';
import { findBesideFiles } from './find-beside-files.js';
import { judgeEntries, type ListedEntry } from './judge-entries.js';
import { PACKET_FILES } from './packet.js';
import type { PacketTexts } from './read-packet.js';
import { type FoundFile, type PacketCheck, verifyPacket } from './verify-packet.js';

/** The parts that are read as well as hashed. */
const READ = new Map(
  (['manifest', 'proof', 'record', 'withheld'] as const).map((part) => [PACKET_FILES[part] as string, part]),
);

/** Where two programs could read two different archives, the check says so: a stranger has another program. */
const READING = {
  strictness: 'balanced',
  filenameValidation: 'tolerant',
  checkLocalFilename: true,
  checkOverlappingEntry: true,
  checkCrc32: true,
  useWebWorkers: false,
} as const;

/** That a file is no archive, or one that broke off. */
export class NoArchiveError extends Error {}

export interface Checking {
  /** How many bytes of how many were looked at; told at every hundredth. */
  readonly tell?: (done: number, total: number) => void;
  /** A faster SHA-256 where there is one. */
  readonly start?: () => RunningSha256;
}

/**
 * Checks a packet: each file is read once, in pieces, and none of the evidence is held. Command and browser alike.
 * @param archive zip.js's way to read parts of a file
 * @param heads that whoever checks it had before
 * @throws NoArchiveError
 */
export async function checkArchive(
  archive: Reader<unknown>,
  heads: readonly LogHead[],
  { tell = () => undefined, start = startSha256 }: Checking = {},
): Promise<PacketCheck> {
  const zip = new ZipReader(archive, READING);
  const entries = await zip.getEntries().catch(asNoArchive);
  const total = entries.reduce((sum, { uncompressedSize }) => sum + uncompressedSize, 0);
  const progress = tellHundredths(tell, total);
  const faults = judgeEntries(entries.map(listed));
  const found: FoundFile[] = [];
  const texts: Partial<Record<keyof PacketTexts, string>> = {};
  for (const entry of entries) {
    const { filename: path, directory: isFolder } = entry;
    const part = READ.get(path);
    const content = new ArchiveContent(start(), part !== undefined, progress);
    const broken = await read(entry, content);
    if (broken !== null) faults.push(broken);
    if (part !== undefined) texts[part] = content.text();
    // A folder that somebody's program wrote when it packed the same files again is no file.
    if (!isFolder || content.bytes > 0) found.push({ path, size: content.bytes, sha256: content.sha256() });
  }
  faults.push(...(await findBesideFiles(archive, zip, entries)));
  const { manifest, proof, record, withheld } = texts;
  const check = verifyPacket(found, { manifest, proof, record, withheld }, heads);
  return { ...check, faults: [...new Set([...faults, ...check.faults])] };
}

function listed({ filename: path, directory: isFolder, symlink: isLink }: Entry): ListedEntry {
  return { path, isFolder, isLink };
}

/** Reads one file; a sentence where it cannot be read, or not as every program would. */
async function read(entry: Entry, content: ArchiveContent): Promise<string | null> {
  try {
    // The library reads a folder as a file without bytes; its types know only files.
    await (entry as FileEntry).getData(content);
    return null;
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    if (error.message === ERR_INVALID_CRC32) {
      return `${entry.filename} was changed: its bytes are not those of the check sum in the archive.`;
    }
    return `${entry.filename} was changed, so that it cannot be read as it should (${error.message}).`;
  }
}

/** A page or a terminal that was told of every piece would have little time for anything else. */
function tellHundredths(tell: (done: number, total: number) => void, total: number): (bytes: number) => void {
  let [done, told] = [0, -1];
  return (bytes) => {
    done += bytes;
    const hundredth = Math.floor((done / Math.max(total, 1)) * 100);
    if (hundredth === told) return;
    told = hundredth;
    tell(done, total);
  };
}

function asNoArchive(error: unknown): never {
  throw new NoArchiveError(error instanceof Error ? error.message : String(error));
}
