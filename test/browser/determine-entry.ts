import lookUpZone from '@photostructure/tz-lookup';
import { determine } from '../../shared/determination/determine.js';
import type { RulePack } from '../../shared/law/rule-pack.js';
import { buildGeography } from '../../shared/place/build-geography.js';
import { unpackStateLines } from '../../shared/place/pack-state-lines.js';
import { problemOf } from '../../shared/wire/problem.js';
import { readIncidentFacts } from '../../shared/wire/read-incident-facts.js';

export interface NamedFacts {
  name: string;
  facts: unknown;
}

/** What `npm run determine` would print of each, by the same code; this file is run in Node and in a browser. */
export function answerAll(
  cases: readonly NamedFacts[],
  packs: readonly RulePack[],
  stateLines: Uint8Array,
): string[] {
  const geography = buildGeography(unpackStateLines(stateLines), lookUpZone);
  return cases.map(({ name, facts }) => {
    const reading = readIncidentFacts(facts);
    if (!reading.ok) return JSON.stringify(problemOf(422, reading.errors, name));
    return JSON.stringify(determine(reading.facts, { packs, geography, source: name }));
  });
}
