import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from '../platform/project-root.js';
import type { DemoBusiness, DemoIncident } from './demo-story.js';

export interface DemoStory {
  readonly business: DemoBusiness;
  /** By the names of their files, in order. */
  readonly incidents: readonly (DemoIncident & { readonly file: string })[];
}

/** Reads fixtures/demo. */
export function readStory(): DemoStory {
  const folder = join(projectRoot(), 'fixtures', 'demo');
  const read = (...path: string[]): unknown => JSON.parse(readFileSync(join(folder, ...path), 'utf8'));
  const files = readdirSync(join(folder, 'incidents')).sort();
  return {
    business: read('business.json') as DemoBusiness,
    incidents: files.map((file) => ({ ...(read('incidents', file) as DemoIncident), file })),
  };
}
