import type { Duty, Reporter } from '../determination/determination.js';
import { BASIS_SENTENCES, nameJurisdiction, nameKind, OUTCOME_WORDS } from '../determination/duty-words.js';
import type { Change } from './decision.js';
import { earliestClock, earliestDue } from './decision.js';
import { findReport, keyOf, type OwedReport, type ReportKey } from './owed-report.js';

/** A report that is not as it was. */
export interface ChangedReport {
  /** As it is named now; as it was named before, when it is gone. */
  readonly key: ReportKey;
  /** As it was named before, which differs once the craft became known. */
  readonly formerKey: ReportKey;
  readonly changes: readonly Change[];
}

/**
 * What changed from one determination to the next that bears on a decision: outcome, deadline, reporter, authority
 * and law, a further ground of what is required, and reports that came or went. Anything else, such as another
 * question, is no change.
 * @example compareReports([required], [required]) // []
 */
export function compareReports(
  before: readonly OwedReport[],
  after: readonly OwedReport[],
): readonly ChangedReport[] {
  const matched = new Set<OwedReport>();
  const changed = after.map((now): ChangedReport => {
    const was = findFormer(before, after, now);
    if (was === null) return { key: keyOf(now), formerKey: keyOf(now), changes: [appeared(now)] };
    matched.add(was);
    return { key: keyOf(now), formerKey: keyOf(was), changes: changesOf(was, now) };
  });
  const gone = before
    .filter((was) => !matched.has(was))
    .map((was): ChangedReport => ({ key: keyOf(was), formerKey: keyOf(was), changes: [wentAway(was)] }));
  return [...changed, ...gone].filter(({ changes }) => changes.length > 0);
}

/** The same report before; that of a craft not named yet is carried on only where there is one craft now. */
function findFormer(
  before: readonly OwedReport[],
  after: readonly OwedReport[],
  now: OwedReport,
): OwedReport | null {
  const exact = before.find(
    ({ duty, reporter }) => duty.id === now.duty.id && reporter.vessel === now.reporter.vessel,
  );
  if (exact !== undefined) return exact;
  const unnamed = before.find(({ duty, reporter }) => duty.id === now.duty.id && reporter.vessel === null);
  return unnamed !== undefined && findReport(after, keyOf(unnamed)) === now ? unnamed : null;
}

function changesOf(was: OwedReport, now: OwedReport): Change[] {
  const { duty: old } = was;
  const { duty } = now;
  const changes: Change[] = [];
  const tell = (what: Change['what'], text: string): unknown => changes.push({ what, text });
  if (old.outcome !== duty.outcome) {
    const [from, to] = [OUTCOME_WORDS[old.outcome], OUTCOME_WORDS[duty.outcome]];
    tell('outcome', `It was “${from}” and is now “${to}”.`);
  }
  for (const text of furtherGrounds(old, duty))
    tell('ground', `A further ground for it is now known. ${text}`);
  if (clockMoved(old, duty)) tell('deadline', `It was ${clockWords(old)}, and is now ${clockWords(duty)}.`);
  if (was.reporter.who !== now.reporter.who) {
    tell(
      'reporter',
      `It was to be made by ${WHO[was.reporter.who]}, and is now to be made by ${WHO[now.reporter.who]}.`,
    );
  }
  if (old.authority !== duty.authority) {
    tell(
      'authority',
      `It went to: ${old.authority ?? 'nobody named'}. It now goes to: ${duty.authority ?? 'nobody named'}.`,
    );
  }
  if (was.law?.version !== now.law?.version || old.packBasis !== duty.packBasis)
    tell('law', lawWords(was, now));
  return changes;
}

const REACH = 'applies/';

/** What alone would make it required now and was not known to before; where it was required anyway. */
function furtherGrounds(was: Duty, now: Duty): string[] {
  if (was.outcome !== 'required' || now.outcome !== 'required') return [];
  const known = new Set(was.reasons.filter(({ value }) => value === 'true').map(({ trigger }) => trigger));
  return now.reasons
    .filter(({ trigger, value }) => value === 'true' && !trigger.startsWith(REACH) && !known.has(trigger))
    .map(({ text }) => text);
}

/** A sooner clock that was possible and is ruled out moves no deadline of a report that is required anyway. */
function clockMoved(old: Duty, now: Duty): boolean {
  if (instant(old.dueAt) !== instant(now.dueAt)) return true;
  if (earliestClock(now) !== null && old.immediate !== now.immediate) return true;
  const [was, is] = [earliestClock(old), earliestClock(now)];
  if (now.outcome !== 'required') return was !== is;
  return is !== null && (was === null || is < was);
}

function instant(at: string | null): number | null {
  return at === null ? null : Date.parse(at);
}

function clockWords(duty: Duty): string {
  const earliest = earliestDue(duty);
  if (earliest === null) return 'without a deadline';
  const due = `due ${duty.immediate ? 'without delay from' : 'by'}`;
  const told = (at: string): string => `${at.slice(0, 10)} ${at.slice(11, 16)}`;
  if (earliest === duty.dueAt) return `${due} ${told(earliest)}`;
  return duty.dueAt === null
    ? `${due} ${told(earliest)}, as far as it can be told`
    : `${due} ${told(duty.dueAt)}, and perhaps already ${told(earliest)}`;
}

const WHO: Readonly<Record<Reporter['who'], string>> = {
  operator: 'the operator',
  owner: 'the owner',
  'operator-else-owner': 'the operator, or the owner if the operator cannot',
  'operator-or-owner': 'the operator or the owner',
  employer: 'the employer',
  'person-in-charge': 'the person in charge',
  'anyone-aboard': 'each person aboard',
};

function lawWords(was: OwedReport, now: OwedReport): string {
  const name = nameJurisdiction(now.duty.jurisdiction);
  const read = (report: OwedReport): string =>
    report.law === null ? 'no rule pack' : `the rule pack read on ${report.law.readOn}`;
  const basis = BASIS_SENTENCES[now.duty.packBasis];
  return `The law at hand changed (${name}): it was ${read(was)} and is now ${was.law?.readOn === now.law?.readOn ? 'a corrected one of that day' : read(now)}. ${basis}`;
}

function appeared({ duty }: OwedReport): Change {
  return { what: 'appeared', text: `${title(duty)}: not called for before. ${OUTCOME_WORDS[duty.outcome]}.` };
}

function wentAway({ duty }: OwedReport): Change {
  return { what: 'gone', text: `${title(duty)}: it no longer stands among the duties of this incident.` };
}

function title({ kind, jurisdiction }: Duty): string {
  return `${nameKind(kind)}, ${nameJurisdiction(jurisdiction)}`;
}
