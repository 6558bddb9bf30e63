import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** An invented file of fixtures/evidence. */
export function sample(name: string): Buffer {
  return readFileSync(join(import.meta.dirname, '..', '..', 'fixtures', 'evidence', name));
}
