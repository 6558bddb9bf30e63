import { mkdir, readdir, stat } from 'node:fs/promises';
import { join, resolve, sep } from 'node:path';
import { type CopyCheck, checkCopy } from './check-copy.js';
import { copyDurably, copyFiles } from './copy-files.js';
import { copyDatabase } from './database/copy-database.js';
import { copiedFiles, type DeskFiles } from './desk-files.js';

export interface MadeBackup extends CopyCheck {
  /** The folder of this copy, complete in itself. */
  readonly folder: string;
  /** When it was begun, RFC 3339. */
  readonly at: string;
  /** Files of evidence that the copy before this one had already. */
  readonly linked: number;
}

/**
 * Copies a desk while it runs into a new folder named by the time, and holds the copy against itself. The heads are
 * copied first: of each there must be the amendments. Evidence comes last: what the record names must be there.
 * @param now RFC 3339
 * @throws Error when something cannot be read or written; what was copied until then is left and said to be unfinished
 */
export async function makeBackup(
  desk: DeskFiles,
  into: string,
  { now, tell }: { now: string; tell: (words: string) => void },
): Promise<MadeBackup> {
  const place = resolve(into);
  if (`${place}${sep}`.startsWith(`${resolve(desk.evidence)}${sep}`)) {
    throw new Error('The copy would lie in the folder of evidence, which it copies: name another folder.');
  }
  await mkdir(place, { recursive: true, mode: 0o700 });
  const before = await latestIn(place);
  const folder = join(place, now.replaceAll(':', '-'));
  await mkdir(folder, { mode: 0o700 });
  const copy = copiedFiles(folder);
  if (await isThere(desk.heads)) await copyDurably(desk.heads, copy.heads);
  tell('Copying the database');
  await copyDatabase(desk.database, copy.database);
  const kept = await copyFiles(join(desk.evidence, 'files'), join(copy.evidence, 'files'), {
    earlier: before === undefined ? undefined : join(copiedFiles(before).evidence, 'files'),
    tell: (done) => tell(`Files of evidence: ${done}`),
  });
  tell('Holding the copy against itself');
  return { ...(await checkCopy(copy)), folder, at: now, linked: kept.linked };
}

const OF_A_COPY = /^\d{4}-\d\d-\d\dT\d\d-\d\d-\d\d\.\d{3}Z$/;

/** The newest copy in a folder; those that broke off count too, as their files are held against their names. */
async function latestIn(folder: string): Promise<string | undefined> {
  const names = (await readdir(folder)).filter((name) => OF_A_COPY.test(name)).sort();
  const last = names.at(-1);
  return last === undefined ? undefined : join(folder, last);
}

function isThere(path: string): Promise<boolean> {
  return stat(path).then(
    () => true,
    (error: NodeJS.ErrnoException) => {
      if (error.code === 'ENOENT') return false;
      throw error;
    },
  );
}
