import type { Determination, Duty } from '../../shared/determination/determination.js';
import { determine } from '../../shared/determination/determine.js';
import type { IncidentFacts } from '../../shared/record/incident-facts.js';
import { readIncidentFacts } from '../../shared/wire/read-incident-facts.js';
import { readRulePacks } from '../../src/server/law/law.api.js';
import { loadGeography } from '../../src/server/place/place.api.js';

/** The packs of forms/law, read and checked once for a test file. */
export const packs = await readRulePacks();
export const geography = loadGeography();

/** A grounding on Lake Texoma with everything known and nothing that calls for a report. */
export function quietGrounding(): IncidentFacts {
  return {
    schemaVersion: 1,
    occurredAt: '2026-06-13T11:20:00-05:00',
    place: { states: ['TX'], timeZone: 'America/Chicago' },
    casualtyTypes: ['grounding'],
    everyoneAccountedFor: 'yes',
    operatorAbleToReport: 'yes',
    officerAtScene: 'no',
    officerFiledReport: 'no',
    oilSheen: 'no',
    vessels: [
      {
        id: 'A',
        use: 'rental',
        ours: true,
        numbered: 'yes',
        inspected: 'no',
        documented: 'no',
        motorized: 'yes',
        completeLoss: 'no',
        stateOfNumber: 'TX',
      },
    ],
    peopleAssessment: 'complete',
    people: [{ id: 'p1', role: 'operator', vessel: 'A', outcome: 'unhurt' }],
    damageAssessment: 'complete',
    damage: [],
  };
}

/** The contract's least document: everything that may be absent is. */
export function nothingKnown(): IncidentFacts {
  return {
    schemaVersion: 1,
    occurredAt: '2026-06-13T11:20:00-05:00',
    place: {},
    casualtyTypes: [],
    vessels: [],
    peopleAssessment: 'not-yet',
    people: [],
    damageAssessment: 'not-yet',
    damage: [],
  };
}

/** Determines over all packs; the facts must be ones that the reader accepts. */
export function determineFacts(facts: IncidentFacts): Determination {
  const read = readIncidentFacts(structuredClone(facts));
  if (!read.ok) throw new Error(`The test's facts are refused: ${JSON.stringify(read.errors)}`);
  return determine(read.facts, { packs, geography, source: 'test' });
}

/** One duty of a determination, which must be there. */
export function dutyOf(determination: Determination, id: string): Duty {
  const duty = determination.duties.find((one) => one.id === id);
  if (duty === undefined) {
    throw new Error(`No duty ${id} among ${determination.duties.map((one) => one.id).join(', ')}`);
  }
  return duty;
}
