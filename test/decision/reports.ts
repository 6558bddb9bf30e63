import type { Determination, Duty, Reporter } from '../../shared/determination/determination.js';
import type { Decision, Reopening, SignedBy } from '../../shared/decision/decision.js';
import type { Filing } from '../../shared/decision/filing.js';
import { listOwedReports, type LawUsed, type OwedReport } from '../../shared/decision/owed-report.js';
import type { IncidentFacts, Vessel } from '../../shared/record/incident-facts.js';
import { determineFacts, quietGrounding } from '../determination/situation.js';

export const LAW: LawUsed = { version: 'a'.repeat(64), readOn: '2026-11-25' };
export const BY: SignedBy = { account: 'account-max', person: 'Max', role: 'manager' };
export const OCCURRED = '2026-06-13T11:20:00-05:00';

/** Epoch milliseconds so many hours after the grounding of the tests, at 11:20 local time. */
export const hoursAfter = (hours: number): number => Date.parse(OCCURRED) + hours * 3_600_000;
export const instant = (at: number): string => new Date(at).toISOString();

export function vesselOf(id: string, changes: Partial<Vessel> = {}): Vessel {
  return { ...(quietGrounding().vessels[0] as Vessel), id, ...changes };
}

/** The reports of a determination over the packs of the project. */
export function reportsOf(facts: IncidentFacts, law: LawUsed | null = LAW): OwedReport[] {
  return listOwedReports(determineFacts(facts), facts, () => law);
}

export function reportOf(facts: IncidentFacts, duty: string, vessel: string | null = 'A'): OwedReport {
  const found = reportsOf(facts).find(
    ({ duty: { id }, reporter }) => id === duty && reporter.vessel === vessel,
  );
  if (found === undefined) throw new Error(`No report ${duty} of ${vessel ?? 'no craft'}`);
  return found;
}

/** A required report due after so many hours, with whatever else the test is about. */
export function aReport(changes: Partial<Duty> = {}, reporter: Partial<Reporter> = {}): OwedReport {
  const one: Reporter = { vessel: 'A', who: 'operator-else-owner', text: '', ...reporter };
  const duty: Duty = {
    id: 'us/accident-report',
    jurisdiction: 'us',
    kind: 'accident-report',
    outcome: 'required',
    reasons: [],
    questions: [],
    immediate: false,
    dueAt: '2026-06-23T11:20:00-05:00',
    dueAtIfRequired: null,
    dueBasis: null,
    authority: 'The reporting authority',
    reporters: [one],
    citations: [],
    packBasis: 'read-primary',
    ...changes,
  };
  return { duty, reporter: one, law: LAW };
}

export const undetermined = (at: string | null): OwedReport =>
  aReport({ outcome: 'undetermined', dueAt: null, dueAtIfRequired: at });

export const nothingDue = (): OwedReport => aReport({ outcome: 'not-required', dueAt: null });

export function aDecision(changes: Partial<Decision> = {}): Decision {
  return {
    id: 'd1',
    duty: 'us/accident-report',
    vessel: 'A',
    determination: 1,
    signedAt: '2026-06-14T16:20:00.000Z',
    by: BY,
    kind: 'no-report',
    ...changes,
  } as Decision;
}

export function aFiling(changes: Partial<Filing> = {}): Filing {
  return {
    id: 'f1',
    form: 'report',
    at: '2026-06-14T11:20:00-05:00',
    way: 'online',
    to: 'Texas Parks and Wildlife Department',
    jurisdiction: 'us-tx',
    filedBy: 'owner',
    filer: 'Max',
    satisfies: [{ duty: 'us/accident-report', vessel: 'A' }],
    by: BY,
    recordedAt: '2026-06-14T16:30:00.000Z',
    ...changes,
  };
}

export function aReopening(changes: Partial<Reopening> = {}): Reopening {
  return {
    id: 'r1',
    at: '2026-06-20T16:20:00.000Z',
    determination: 2,
    duty: 'us/accident-report',
    vessel: 'A',
    changes: [{ what: 'outcome', text: 'It was “Not required” and is now “Required”.' }],
    ...changes,
  };
}

export const TEXAS: Determination['states'] = [{ state: 'TX', chosenBy: 'stated', distanceToLineM: null }];
