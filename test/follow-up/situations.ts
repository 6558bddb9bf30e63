import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Known } from '../../shared/call/known.js';
import { listOwedReports } from '../../shared/decision/owed-report.js';
import { determine } from '../../shared/determination/determine.js';
import {
  type ClaimsClock,
  type ClaimsPeriod,
  runClaimsClocks,
} from '../../shared/follow-up/claims-clocks.js';
import type { HouseRule } from '../../shared/follow-up/house-rule.js';
import { type PlannedTask, planTasks } from '../../shared/follow-up/plan-tasks.js';
import { firstWrittenClaim } from '../../shared/follow-up/claims-clocks.js';
import type { TaskForms } from '../../shared/follow-up/task-template.js';
import { listRentalRecords } from '../../shared/law/list-rental-records.js';
import type { RulePack } from '../../shared/law/rule-pack.js';
import type { IncidentRecord, RecordSections } from '../../shared/record/incident-record.js';
import type { PersonRecord } from '../../shared/record/people-section.js';
import { recordToFacts } from '../../shared/record/record-to-facts.js';
import { whenItHappened } from '../../shared/record/when-it-happened.js';
import { projectRoot } from '../../src/server/platform/project-root.js';
import { loadGeography } from '../../src/server/place/place.api.js';

export const ZONE = 'America/Chicago';
export const OPENED = '2026-06-13T16:40:00.000Z';

export const saw = <T>(value: T): Known<T> => ({ value, known: 'saw' });

export const recordOf = (sections: Partial<RecordSections>): IncidentRecord => ({
  incident: { reference: '2026-0042', openedAt: OPENED, status: 'open', timeZone: ZONE },
  sections,
});

/** A rented PWC in Texas; everybody is listed and found. */
export const onTheWater = (
  people: readonly PersonRecord[],
  sections: Partial<RecordSections> = {},
): IncidentRecord =>
  recordOf({
    call: { said: 'help, PWC 7', craftNamed: ['PWC 7'] },
    'time-and-place': {
      occurred: saw({ at: '2026-06-13T11:20:00-05:00', precision: 'to-the-minute' }),
      states: saw(['TX']),
    },
    craft: { craft: [{ id: 'c1', ours: true, name: 'PWC 7', use: saw('rental'), completeLoss: saw('no') }] },
    people: {
      everyoneAccountedFor: saw('yes'),
      operatorAbleToReport: saw('yes'),
      assessment: saw('complete'),
      people: [...people],
    },
    damage: { assessment: saw('complete'), lines: [] },
    ...sections,
  });

export const UNHURT: PersonRecord = { id: 'p1', role: saw('operator'), craft: 'c1', outcome: saw('unhurt') };
export const STITCHED: PersonRecord = {
  ...UNHURT,
  outcome: saw('injured'),
  care: saw('beyond-first-aid'),
};
export const DEAD: PersonRecord = {
  ...UNHURT,
  outcome: saw('died'),
  diedAt: saw('2026-06-13T12:00:00-05:00'),
};

export const writtenDemand = (at: string, answer: 'yes' | 'no' | 'unknown' = 'yes', id = 'k1') => ({
  id,
  party: 'renter' as const,
  direction: 'in' as const,
  at: { at, how: 'entered' as const },
  writtenDemand: saw(answer),
});

function readForm<T>(name: string): T {
  return JSON.parse(readFileSync(join(projectRoot(), 'forms', 'follow-up', name), 'utf8')) as T;
}

export const TEMPLATES = readForm<TaskForms>('tasks.json').tasks;
export const PERIODS = readForm<{ clocks: ClaimsPeriod[] }>('claims-clocks.json').clocks;
export const HOUSE_RULES = readForm<{ rules: HouseRule[] }>('house-rules.json').rules;

export function clocksOf(record: IncidentRecord): ClaimsClock[] {
  return runClaimsClocks(PERIODS, {
    occurredAt: Date.parse(whenItHappened(record).occurredAt),
    firstClaim: firstWrittenClaim(record, null),
    zone: ZONE,
  });
}

/** The plan on the law as it is in the packs. */
export function planOn(record: IncidentRecord, packs: readonly RulePack[]): PlannedTask[] {
  const facts = recordToFacts(record);
  const determination = determine(facts, { packs, geography: loadGeography(), source: 'test' });
  const reports = listOwedReports(determination, facts, () => null);
  const states = determination.states.map(({ state }) => state);
  const rentalRecords = listRentalRecords(packs, states);
  const at = { record, reports, rentalRecords, reopened: [], clocks: clocksOf(record), zone: ZONE };
  return planTasks(at, TEMPLATES);
}
