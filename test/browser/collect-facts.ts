import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { readLawCases } from '../determination/law-cases.js';
import { readSemanticCases } from '../determination/semantic-cases.js';
import { quietGrounding } from '../determination/situation.js';
import type { NamedFacts } from './determine-entry.js';

const ROOT = join(import.meta.dirname, '..', '..');

/** Every document of facts in the project, good and bad, with the cases beside the packs, those of each rule, and some places. */
export function collectFacts(): NamedFacts[] {
  return [...documentsIn('fixtures'), ...readLawCases(), ...readSemanticCases(), ...PLACES.map(atPlace)];
}

function documentsIn(folder: string): NamedFacts[] {
  return readdirSync(join(ROOT, folder), { recursive: true })
    .map(String)
    .filter((file) => file.endsWith('.json'))
    .sort()
    .flatMap((file) => factsOf(`${folder}/${file}`));
}

/** A file is one document of facts, or a list of named ones. */
function factsOf(path: string): NamedFacts[] {
  const document: unknown = JSON.parse(readFileSync(join(ROOT, path), 'utf8'));
  const { cases } = Object(document) as { cases?: NamedFacts[] };
  return (
    cases?.map(({ name, facts }) => ({ name: `${path} ${name}`, facts })) ?? [{ name: path, facts: document }]
  );
}

/** Positions from which zone and states must be found: inside, near a line, off shore, in no state. */
const PLACES: readonly (readonly [latitude: number, longitude: number])[] = [
  [33.82, -96.575],
  [33.97, -96.62],
  [35.02, -114.63],
  [37.0, -109.05],
  [36.9, -111.5],
  [39.1, -120.03],
  [42.0, -87.5],
  [45.02, -87.6],
  [46.5, -84.4],
  [30.25, -88.1],
  [25.0, -80.5],
  [24.5, -81.8],
  [41.2, -71.6],
  [44.8, -66.95],
  [58.3, -134.4],
  [51.9, 179.6],
  [21.28, -157.85],
  [18.47, -66.12],
  [13.45, 144.65],
  [-14.28, -170.69],
  [15.2, 145.72],
  [0, 0],
  [90, 0],
  [-90, 180],
];

function atPlace([latitude, longitude]: (typeof PLACES)[number]): NamedFacts {
  return {
    name: `at ${latitude}, ${longitude}`,
    facts: { ...quietGrounding(), place: { latitude, longitude, accuracyM: 15 } },
  };
}
