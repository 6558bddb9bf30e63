import type { Entry, Reader, ZipReader } from '@zip.js/zip.js/lib/zip-core-native.js';

/** That files lie in another order than the list has them is no fault. */
const HARMLESS = 'unsorted central directory';
const END_BYTES = 22;

/**
 * What an archive holds beside the files that it lists, once they were read: no program shows it, and it would travel
 * along unseen, or be what another program shows instead.
 * @returns a sentence, or nothing
 */
export async function findBesideFiles(
  archive: Reader<unknown>,
  zip: ZipReader<unknown>,
  entries: readonly Entry[],
): Promise<string[]> {
  const odd = (zip.warnings ?? []).map(({ reason }) => reason).filter((reason) => reason !== HARMLESS);
  const end = await archive.readUint8Array(archive.size - END_BYTES, END_BYTES);
  if (!isPlainEnd(end)) odd.push('a comment, or a part on another disk');
  if (odd.length > 0) {
    return [
      `The archive holds something beside its files (${odd.join(', ')}): another program may see others.`,
    ];
  }
  const spare = entries.reduce((left, entry) => left - bytesOf(entry), zip.directoryOffset ?? Number.NaN);
  // Where a file cannot be read it is not known where it ends, and it is named already.
  if (Number.isNaN(spare) || spare === 0) return [];
  return [`The archive holds ${spare} bytes between its files that belong to none of them.`];
}

/** That it ends with its last record, names no other disk, and has as many files here as in all (APPNOTE.TXT 4.3.16). */
function isPlainEnd(end: Uint8Array): boolean {
  const isRecord = [0x50, 0x4b, 5, 6, 0, 0, 0, 0].every((byte, at) => end[at] === byte);
  return isRecord && end[8] === end[10] && end[9] === end[11] && end[20] === 0 && end[21] === 0;
}

/** All that belongs to a file: its header, its bytes and what is said again behind them (APPNOTE.TXT 4.3.7 to 4.3.9). */
function bytesOf({ offset, compressedSize, localDirectory }: Entry): number {
  if (localDirectory === undefined) return Number.NaN;
  const { dataOffset, dataDescriptor } = localDirectory;
  const behind = dataDescriptor === undefined ? 0 : lengthOf(dataDescriptor);
  return dataOffset - offset + compressedSize + behind;
}

function lengthOf({ zip64, signature }: { zip64: boolean; signature: boolean }): number {
  return (zip64 ? 20 : 12) + (signature ? 4 : 0);
}
