import lookUpZone from '@photostructure/tz-lookup';
import type { Determination } from '../../../shared/determination/determination.js';
import { determine } from '../../../shared/determination/determine.js';
import type { FieldError } from '../../../shared/kernel/field-error.js';
import type { RulePack } from '../../../shared/law/rule-pack.js';
import { buildGeography } from '../../../shared/place/build-geography.js';
import type { Geography } from '../../../shared/place/geography.js';
import { readIncidentFacts } from '../../../shared/wire/read-incident-facts.js';
import { loadStateLines } from '../map/load-state-lines.js';

export type DeterminedHere =
  { readonly determination: Determination } | { readonly errors: readonly FieldError[] };

let geography: Promise<Geography> | undefined;

/**
 * The determination of facts, made in this browser by the code that the service runs; nothing is sent or kept. Import
 * it when it is needed: it brings the whole of the law's logic, and the state lines (115 kB) on first use.
 * @throws TypeError where there is no signal and the state lines are not kept on this device
 */
export async function determineHere(facts: unknown, packs: readonly RulePack[]): Promise<DeterminedHere> {
  const reading = readIncidentFacts(facts);
  if (!reading.ok) return { errors: reading.errors };
  geography ??= loadGeography();
  try {
    return {
      determination: determine(reading.facts, { packs, geography: await geography, source: 'browser' }),
    };
  } catch (error) {
    geography = undefined;
    throw error;
  }
}

async function loadGeography(): Promise<Geography> {
  return buildGeography(await loadStateLines(), lookUpZone);
}
