import { citePack } from '../law/cite-pack.js';
import type { TriggerContext } from '../law/evaluate-trigger.js';
import type { Deadline } from '../law/finding.js';
import { readDamage } from '../law/read-damage.js';
import type { Occurrence } from '../law/read-occurrence.js';
import type { DutyRule, NoticeRule, RulePack, ScopeAid } from '../law/rule-pack.js';
import type { PeopleReading } from '../law/test-people.js';
import { applyScope, noticeCondition, officerExcuse } from './apply-scope.js';
import { askNow, askTheState } from './ask-the-state.js';
import { determineDuty, weighDuty, type DutyInput } from './determine-duty.js';
import type { Duty } from './determination.js';
import { jurisdictionId } from './jurisdiction-id.js';
import type { ScopePart } from './scope-part.js';
import { answeredParts } from './weigh-aids.js';
import { whereToFile } from './where-to-file.js';

/** One occurrence with what is read of it once for all jurisdictions. */
export interface Case {
  readonly occurrence: Occurrence;
  readonly people: PeopleReading;
  /** Candidate states of the place, USPS codes. */
  readonly candidates: readonly string[];
  /** What may be asked whether it is a reportable occurrence, of all jurisdictions. */
  readonly aids: readonly ScopeAid[];
}

/**
 * The duties of one jurisdiction, the accident report first. A pack that was not read, or is not known to
 * have been in force at the occurrence, says only: ask now.
 */
export function determinePack(pack: RulePack, at: Case): Duty[] {
  const silence = silenceOf(pack, at.occurrence);
  if (silence !== null) return silentDuties(pack, at, silence);
  const context = triggerContext(pack, at);
  return [...determineReport(pack, context, at), ...determineNotices(pack, pack.notices, at)];
}

/**
 * The earliest clock that the written report of a jurisdiction has or could get, without its trace; null where its law
 * sets none.
 */
export function reportClock(pack: RulePack, at: Case): Deadline | null {
  if (pack.report === null || silenceOf(pack, at.occurrence) !== null) return null;
  // A required duty's sooner clock is the one that could still come.
  const { due, ifRequired } = weighDuty(reportInput(pack, pack.report, triggerContext(pack, at), at));
  return ifRequired ?? due;
}

/** Notices that a state asks of the vessels it numbers, for occurrences elsewhere. */
export function determineNumberNotices(pack: RulePack, at: Case): Duty[] {
  const { facts } = at.occurrence;
  const numbered = facts.vessels.some(({ stateOfNumber }) => stateOfNumber === pack.jurisdiction);
  if (!numbered || at.candidates.includes(pack.jurisdiction)) return [];
  if (silenceOf(pack, at.occurrence) !== null) return [];
  const context = triggerContext(pack, at);
  return pack.notices
    .filter(({ condition }) => condition?.is === 'numbered-here-occurred-elsewhere')
    .map((notice) => determineNotice(pack, notice, context, at));
}

/** Notices of a pack, each determined; of law that is silent on the day, only the advice to ask. */
export function determineNotices(pack: RulePack, notices: readonly NoticeRule[], at: Case): Duty[] {
  const silence = silenceOf(pack, at.occurrence);
  if (silence !== null) {
    return notices.map(({ id, kind }) => ({ ...askDuty(pack, at, id, silence, 'counsel'), kind }));
  }
  const context = triggerContext(pack, at);
  return notices.map((notice) => determineNotice(pack, notice, context, at));
}

/** `us/oil-discharge-notice` */
export function dutyId({ jurisdiction }: Pick<RulePack, 'jurisdiction'>, id: string): string {
  return `${jurisdictionId(jurisdiction)}/${id}`;
}

function determineReport(pack: RulePack, context: TriggerContext, at: Case): Duty[] {
  const { facts } = at.occurrence;
  if (pack.report === null) {
    const why = `The text read for ${pack.name} shows no written accident report, which does not mean there is none.`;
    return pack.noWrittenReport ? [] : [askDuty(pack, at, 'accident-report', why)];
  }
  const duty = determineDuty(reportInput(pack, pack.report, context, at));
  const { officerReportExcuses, reportConfidential } = pack;
  const filedWith = pack.jurisdiction === 'US' ? { filedWith: whereToFile(facts, at.candidates) } : {};
  return [{ ...duty, ...filedWith, officerReportExcuses, reportConfidential }];
}

function reportInput(pack: RulePack, rule: DutyRule, context: TriggerContext, at: Case): DutyInput {
  const { facts } = at.occurrence;
  return {
    id: dutyId(pack, 'accident-report'),
    kind: 'accident-report',
    pack,
    rule,
    scope: [...applyScope(pack, facts), ...answered(pack, at), ...officerExcuse(pack, facts)],
    context,
  };
}

function determineNotice(pack: RulePack, notice: NoticeRule, context: TriggerContext, at: Case): Duty {
  const { facts } = at.occurrence;
  const { kind, telephone } = notice;
  const duty = determineDuty({
    id: dutyId(pack, notice.id),
    kind,
    pack,
    rule: notice,
    scope: [
      ...applyScope(pack, facts),
      ...answered(pack, at),
      ...noticeCondition(pack, notice, facts, at.candidates),
    ],
    context,
  });
  return telephone === undefined ? duty : { ...duty, telephone };
}

/** What people answered takes accident duties out, and none on another matter. */
function answered({ jurisdiction, subject }: RulePack, at: Case): ScopePart[] {
  if (subject !== undefined) return [];
  return answeredParts(at.aids, jurisdictionId(jurisdiction), at.occurrence.facts);
}

function silenceOf(pack: RulePack, occurrence: Occurrence): string | null {
  if (pack.basis === 'not-read') return `The law of ${pack.name} has not been read.`;
  if (occurrence.localDate < pack.effectiveFrom) {
    return `The text read for ${pack.name} is known to be in force only from ${pack.effectiveFrom}.`;
  }
  return null;
}

/** The federal duties are always present, a state's notices only where its law speaks. */
function silentDuties(pack: RulePack, at: Case, why: string): Duty[] {
  const notices = pack.jurisdiction === 'US' ? pack.notices.map(({ id }) => id) : [];
  return ['accident-report', ...notices].map((kind) => askDuty(pack, at, kind, why));
}

function askDuty(pack: RulePack, at: Case, kind: string, why: string, whom?: string): Duty {
  return askTheState({
    jurisdiction: jurisdictionId(pack.jurisdiction),
    kind,
    why,
    packBasis: pack.basis,
    authority: pack.agency,
    facts: at.occurrence.facts,
    questions: [askNow(pack.name, whom)],
    ...(whom !== undefined && { whom }),
  });
}

function triggerContext(pack: RulePack, at: Case): TriggerContext {
  const { occurrence, people } = at;
  return {
    occurrence,
    people,
    damage: {
      items: readDamage(occurrence, pack.personalProperty),
      complete: occurrence.facts.damageAssessment === 'complete',
    },
    pack,
    limits: {
      occurrence,
      holidays: pack.holidays.map(({ date }) => date),
      citation: citePack(pack)[0] ?? pack.name,
    },
  };
}
