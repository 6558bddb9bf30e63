import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { packStateLines } from '../../shared/place/pack-state-lines.js';
import { stateLinesFromTopology, type StatesTopology } from '../../shared/place/state-lines-from-topology.js';

/**
 * Writes `dist/data/state-lines.bin` under the project's root from the boundary file of the us-atlas
 * package, so that the first question about a position waits for a file and not for the
 * preparation of one.
 */
export function prepareStateLines(root: string): void {
  const atlas = createRequire(import.meta.url).resolve('us-atlas/states-10m.json');
  const topology = JSON.parse(readFileSync(atlas, 'utf8')) as StatesTopology;
  const folder = join(root, 'dist', 'data');
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'state-lines.bin'), packStateLines(stateLinesFromTopology(topology)));
}
