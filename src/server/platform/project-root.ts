import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The folder that holds package.json: the same from the sources and from dist/. */
export function projectRoot(): string {
  let folder = import.meta.dirname;
  while (!existsSync(join(folder, 'package.json'))) {
    const parent = dirname(folder);
    if (parent === folder) throw new Error(`No package.json in any folder above ${import.meta.dirname}.`);
    folder = parent;
  }
  return folder;
}
