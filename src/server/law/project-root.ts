import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * The folder that holds package.json, looked for upwards from this code: it may run from source, from
 * `dist/src/server/law` or inside a bundle in `dist/cli`, each at another depth.
 */
export function projectRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    const parent = dirname(folder);
    if (parent === folder) throw new Error(`No package.json in any folder above ${import.meta.url}`);
    folder = parent;
  }
  return folder;
}
