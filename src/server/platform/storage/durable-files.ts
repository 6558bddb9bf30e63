import { mkdir, open, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { Readable } from 'node:stream';

/** Nobody but the account that runs the service reads what is kept: pictures of the hurt and the dead among it. */
export const PRIVATE_FILE = 0o600;
const PRIVATE_FOLDER = 0o700;

/** A video of 2 GiB does not drown in calls, and a piece is hashed so soon that a call for help does not wait for it. */
export const READ_BYTES = 128 * 1024;

export async function makePrivateFolder(folder: string): Promise<void> {
  await mkdir(folder, { recursive: true, mode: PRIVATE_FOLDER });
}

/** Where files are written before they have a name: nothing in it outlives the service that writes it. */
export const ARRIVING = 'arriving';

/** Drops what a crash left half written; before the service takes anything. */
export async function clearHalfWritten(folder: string): Promise<void> {
  await rm(join(folder, ARRIVING), { recursive: true, force: true });
}

/**
 * The pieces of a stream, for whoever is not ready to read yet. One that breaks meanwhile throws when it is read: with
 * nobody listening it would end the process.
 */
export function piecesOf(source: Readable): AsyncIterable<Buffer> {
  source.once('error', () => undefined);
  return source;
}

/** Gives a finished file its name, and has the folder remember it through a power cut. */
export async function moveInto(from: string, to: string): Promise<void> {
  await makePrivateFolder(dirname(to));
  await rename(from, to);
  const folder = await open(dirname(to), 'r');
  try {
    await folder.sync();
  } finally {
    await folder.close();
  }
}

/** In bytes; undefined when there is no such file. */
export async function sizeOfFile(path: string): Promise<number | undefined> {
  try {
    return (await stat(path)).size;
  } catch (error) {
    if (isMissing(error)) return undefined;
    throw error;
  }
}

function isMissing(error: unknown): boolean {
  return error instanceof Error && 'code' in error && error.code === 'ENOENT';
}
