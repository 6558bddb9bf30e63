import { foldPath, isPlainPath } from './plain-path.js';

/** What the list of an archive says of one of its files, before it is read. */
export interface ListedEntry {
  readonly path: string;
  readonly isFolder: boolean;
  /** A link to a file instead of one: where it is unpacked, what is written to it lands elsewhere. */
  readonly isLink: boolean;
}

/** What is wrong with the list of an archive, each in a sentence; nothing of it was made by this program. */
export function judgeEntries(entries: readonly ListedEntry[]): string[] {
  const faults: string[] = [];
  const seen = new Set<string>();
  for (const { path, isFolder, isLink } of entries) {
    if (!isPlainPath(isFolder ? path.replace(/\/$/, '') : path)) {
      faults.push(
        `${path} is a name that no packet has: it may lead out of the folder, or hide what it is. Do not unpack it.`,
      );
    }
    if (isLink) faults.push(`${path} is a link and no file. Do not unpack it.`);
    if (seen.has(foldPath(path))) {
      faults.push(`${path} stands in the archive twice: which one is read depends on the program.`);
    }
    seen.add(foldPath(path));
  }
  return faults;
}
