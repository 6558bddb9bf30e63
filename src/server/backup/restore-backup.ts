import { mkdir, readdir, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { type CopyCheck, checkCopy } from './check-copy.js';
import { copyDurably, copyFiles } from './copy-files.js';
import { copiedFiles, type DeskFiles } from './desk-files.js';

/**
 * Puts a copy where a desk is to be, and holds it against itself there. Nothing is written over: where a desk is
 * already, it says so and does nothing.
 * @throws Error when the copy is not sound, when something is there already, or when a file cannot be written
 */
export async function restoreBackup(
  folder: string,
  desk: DeskFiles,
  tell: (words: string) => void,
): Promise<CopyCheck> {
  const copy = copiedFiles(folder);
  if ((await sizeAt(copy.database)) === undefined) {
    throw new Error(`There is no copy of a desk in ${folder}: name the folder that has desk.sqlite in it.`);
  }
  for (const file of [desk.database, `${desk.database}-wal`, desk.heads]) {
    if ((await sizeAt(file)) !== undefined) {
      throw new Error(
        `${file} is there already. Stop the service and move it away first; nothing was changed.`,
      );
    }
  }
  if ((await namesIn(join(desk.evidence, 'files'))).length > 0) {
    throw new Error(`${desk.evidence} holds evidence already. Move it away first; nothing was changed.`);
  }
  tell('Holding the copy against itself');
  const { faults } = await checkCopy(copy);
  if (faults.length > 0) {
    throw new Error(['The copy is not as it was written; nothing was changed.', ...faults].join('\n  '));
  }
  for (const file of [desk.database, desk.heads]) {
    await mkdir(dirname(file), { recursive: true, mode: 0o700 });
  }
  await copyFiles(join(copy.evidence, 'files'), join(desk.evidence, 'files'), {
    tell: (done) => tell(`Files of evidence: ${done}`),
  });
  if ((await sizeAt(copy.heads)) !== undefined) await copyDurably(copy.heads, desk.heads);
  // Last: a desk that has its database has everything.
  await copyDurably(copy.database, desk.database);
  return checkCopy(desk);
}

function sizeAt(path: string): Promise<number | undefined> {
  return orNothing(stat(path).then(({ size }) => size));
}

async function namesIn(folder: string): Promise<string[]> {
  return (await orNothing(readdir(folder))) ?? [];
}

function orNothing<T>(work: Promise<T>): Promise<T | undefined> {
  return work.catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return undefined;
    throw error;
  });
}
