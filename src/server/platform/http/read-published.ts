import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export type JsonDocument = Record<string, unknown>;

/** What the project publishes of itself, as the build put it into dist/. */
export interface Published {
  version: string;
  /** By file name without `.schema.json`. */
  schemas: ReadonlyMap<string, JsonDocument>;
  samples: { title: string; about: string; facts: unknown }[];
}

export function readPublished(root: string): Published {
  const read = (...path: string[]): unknown => JSON.parse(readFileSync(join(root, ...path), 'utf8'));
  const schemas = readdirSync(join(root, 'dist', 'forms', 'schemas')).map((file): [string, JsonDocument] => [
    file.replace(/\.schema\.json$/, ''),
    read('dist', 'forms', 'schemas', file) as JsonDocument,
  ]);
  const samples = read('dist', 'web', 'samples', 'samples.json') as {
    file: string;
    title: string;
    about: string;
  }[];
  return {
    version: (read('package.json') as { version: string }).version,
    schemas: new Map(schemas),
    samples: samples.map(({ file, ...named }) => ({
      ...named,
      facts: read('dist', 'web', 'samples', file),
    })),
  };
}
