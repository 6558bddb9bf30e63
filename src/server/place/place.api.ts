import { existsSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { buildGeography, type LookUpZone } from '../../../shared/place/build-geography.js';
import type { Geography } from '../../../shared/place/geography.js';
import { unpackStateLines } from '../../../shared/place/pack-state-lines.js';
import {
  stateLinesFromTopology,
  type StatesTopology,
} from '../../../shared/place/state-lines-from-topology.js';
import type { StateLines } from '../../../shared/place/state-lines.js';
import { projectRoot } from '../platform/project-root.js';

/**
 * Geography for server and command line. Nothing is read until the first question, which most commands
 * never ask; from then on the data stays in memory.
 */
export function loadGeography(): Geography {
  return {
    zoneAt: (latitude, longitude) => loaded().zoneAt(latitude, longitude),
    statesNear: (latitude, longitude, withinM) => loaded().statesNear(latitude, longitude, withinM),
  };
}

/** The lines themselves, to be drawn. */
export function loadStateLines(): StateLines {
  stateLines ??= readStateLines();
  return stateLines;
}

let geography: Geography | undefined;
let stateLines: StateLines | undefined;

function loaded(): Geography {
  geography ??= buildGeography(loadStateLines(), lookUpZone);
  return geography;
}

// Not an import: a package is to be loaded by the first question that needs it, and synchronously.
const requireHere = createRequire(import.meta.url);
const lookUpZone: LookUpZone = (latitude, longitude) =>
  (requireHere('@photostructure/tz-lookup') as LookUpZone)(latitude, longitude);

/**
 * The built file, or where there is none the same lines prepared in memory. Run from the TypeScript
 * sources (tests), a built file may be older than the code that prepares it and is left alone.
 */
function readStateLines(): StateLines {
  const built = join(projectRoot(), 'dist', 'data', 'state-lines.bin');
  if (!import.meta.url.endsWith('.ts') && existsSync(built)) {
    return unpackStateLines(readFileSync(built));
  }
  return stateLinesFromTopology(requireHere('us-atlas/states-10m.json') as StatesTopology);
}
