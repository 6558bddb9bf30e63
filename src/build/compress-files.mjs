import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';

const WAYS = [
  ['br', (bytes) => promisify(brotliCompress)(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } })],
  ['gz', (bytes) => promisify(gzip)(bytes, { level: 9 })],
];
const COMPRESSIBLE = /\.(js|css|bin)$/;

/**
 * Lays a compressed copy of each file beside it, which the service hands out to whoever takes it: with bad signal three
 * quarters of the waiting is for bytes. Only for files that never change under their name, or that come with their copies.
 */
export async function compressFiles(folder) {
  const files = (await readdir(folder)).filter((file) => COMPRESSIBLE.test(file));
  await Promise.all(
    files.map(async (file) => {
      const bytes = await readFile(join(folder, file));
      for (const [ending, compress] of WAYS) {
        await writeFile(join(folder, `${file}.${ending}`), await compress(bytes));
      }
    }),
  );
}
