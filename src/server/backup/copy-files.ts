import { constants } from 'node:fs';
import { copyFile, link, mkdir, open, readdir, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';

export interface CopiedFiles {
  readonly files: number;
  /** Of them, those that an earlier copy had already. */
  readonly linked: number;
}

/**
 * Copies every file under a folder, each on the disk before the next. A file that an earlier copy has under the same
 * name and of the same size is linked and not copied: the names of evidence are made of its content.
 * @param from need not exist: then there is nothing to copy
 */
export async function copyFiles(
  from: string,
  to: string,
  { earlier, tell }: { earlier?: string | undefined; tell: (done: number) => void },
): Promise<CopiedFiles> {
  let [files, linked] = [0, 0];
  for (const name of await namesUnder(from)) {
    await mkdir(dirname(join(to, name)), { recursive: true, mode: 0o700 });
    if (earlier !== undefined && (await isLinked(join(from, name), join(earlier, name), join(to, name)))) {
      linked += 1;
    } else {
      await copyDurably(join(from, name), join(to, name));
    }
    files += 1;
    tell(files);
  }
  return { files, linked };
}

/** Copies one file to where there is none, and waits until it is on the disk. */
export async function copyDurably(from: string, to: string): Promise<void> {
  await copyFile(from, to, constants.COPYFILE_EXCL);
  const written = await open(to, 'r+');
  await written.chmod(0o600);
  await written.sync();
  await written.close();
}

async function namesUnder(folder: string): Promise<string[]> {
  try {
    const entries = await readdir(folder, { recursive: true, withFileTypes: true });
    return entries
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name).slice(folder.length + 1))
      .sort();
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
    throw error;
  }
}

/** Other disks cannot be linked to: there the file is copied. */
const CANNOT_LINK = new Set(['ENOENT', 'EXDEV', 'EPERM', 'ENOTSUP', 'EMLINK']);

async function isLinked(original: string, earlier: string, to: string): Promise<boolean> {
  try {
    const [now, then] = [await stat(original), await stat(earlier)];
    if (now.size !== then.size) return false;
    await link(earlier, to);
    return true;
  } catch (error) {
    if (CANNOT_LINK.has((error as NodeJS.ErrnoException).code ?? '')) return false;
    throw error;
  }
}
