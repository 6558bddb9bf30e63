import { earliestDue } from '../decision/decision.js';
import { formOf } from '../decision/judge-filing.js';
import type { OwedReport, ReportKey } from '../decision/owed-report.js';
import type { Duty } from '../determination/determination.js';
import { nameJurisdiction, nameKind } from '../determination/duty-words.js';
import type { RentalRecordRule } from '../law/list-rental-records.js';
import type { IncidentRecord } from '../record/incident-record.js';
import type { RequestOfIncident } from '../record/legal-request.js';
import { plusHours, zoneClock, type ZoneClock } from '../time/zone-clock.js';
import type { ClaimsClock } from './claims-clocks.js';
import { readSituation, type Situation } from './read-situation.js';
import { requestSubjects } from './request-subjects.js';
import type { DueRule, TaskOwner, TaskTemplate } from './task-template.js';

/** A report with what changed about it, each in words. */
export interface ReopenedReport extends ReportKey {
  readonly changes: readonly string[];
}

/** What tasks are planned from. */
export interface FollowUpCase {
  readonly record: IncidentRecord;
  /** The reports that are ours to decide about: `listOwedReports`. */
  readonly reports: readonly OwedReport[];
  /** Duties that no paper answers: `isConduct`. */
  readonly conduct?: readonly Duty[];
  /** Of the states in which it may have happened: `listRentalRecords`. */
  readonly rentalRecords?: readonly RentalRecordRule[];
  /** Requests that concern it or did, as its record says them. */
  readonly requests?: readonly RequestOfIncident[];
  /** What about reports that were signed or filed is not as it was, and nobody has answered yet. */
  readonly reopened: readonly ReopenedReport[];
  readonly clocks: readonly ClaimsClock[];
  /** Zone of the incident. */
  readonly zone: string;
}

/** A task as it is called for now. */
export interface PlannedTask {
  /** The same whenever the same thing is called for: `file:us-tx/accident-report:PWC 7`. */
  readonly key: string;
  readonly template: string;
  /** Place of its template in the order of the work, from 0: the same whatever else is called for. */
  readonly order: number;
  readonly title: string;
  readonly why: string;
  readonly source: string;
  readonly owner: TaskOwner;
  /** RFC 3339, UTC; null where the law that calls for it was not read. */
  readonly dueAt: string | null;
  readonly dueWhy: string;
  readonly evidence: string;
  readonly escalates: boolean;
  /** What it rests on, each in words: anything new calls for work that was done to be done again. */
  readonly restsOn: readonly string[];
  /** Id of the duty, where it is about one. */
  readonly duty: string | null;
}

/** A law that gives somebody no more than this is told by telephone, and to the next person if nobody takes it. */
const SHORTEST_HOURS = 8;

/**
 * The tasks of an incident as the facts and duties stand, in the order in which the work is done.
 * @example planTasks({ record: recordOfABareCall, reports: [], reopened: [], clocks: [], zone }, tasks)[0].key // 'headcount'
 */
export function planTasks(at: FollowUpCase, templates: readonly TaskTemplate[]): PlannedTask[] {
  const situation = readSituation(at.record);
  const clock = zoneClock(at.zone);
  return templates
    .filter(({ when }) => when.every(({ fact, is }) => is.includes(situation.facts[fact])))
    .flatMap((template) => subjectsOf(template, situation, at).map((subject) => ({ template, subject })))
    .map(({ template, subject }) => {
      const due = dueOf(template.due, subject, situation.learnedAt, clock);
      return {
        key: [template.id, ...subject.key].join(':'),
        template: template.id,
        order: templates.indexOf(template),
        title: filled(template.title, subject),
        why: filled(template.why, subject),
        source: subject.citations ?? template.source,
        owner: template.owner,
        dueAt: due.at === null ? null : new Date(due.at).toISOString(),
        dueWhy: due.why,
        evidence: template.evidence,
        escalates: template.escalates || isShort(template, due.at, situation.learnedAt, subject.duty),
        restsOn: restsOn(template, situation, subject),
        duty: subject.duty?.id ?? null,
      };
    });
}

/** What one task of a template is about. */
interface Subject {
  readonly key: readonly string[];
  readonly words: Readonly<Record<string, string>>;
  readonly citations?: string;
  readonly duty?: Duty;
  /** Epoch milliseconds from which, or against which, its due time counts. */
  readonly from?: number;
  /** The time that was promised. */
  readonly by?: number | null;
  readonly changes?: readonly string[];
}

function filled(words: string, subject: Subject): string {
  return words.replaceAll(/\{(\w+)\}/g, (_, name: string) => subject.words[name] ?? name);
}

function subjectsOf(template: TaskTemplate, situation: Situation, at: FollowUpCase): Subject[] {
  switch (template.for) {
    case 'incident':
      return [{ key: [], words: {} }];
    case 'own-craft':
      return craftOf(situation);
    case 'notice':
      return dutiesOf(at.reports, (duty) => duty.outcome === 'required' && isNotice(duty));
    case 'open-duty':
      return [
        ...dutiesOf(at.reports, (duty) => duty.outcome === 'undetermined'),
        ...conductOf(at, 'undetermined'),
      ];
    case 'conduct':
      return conductOf(at, 'required');
    case 'report':
      return at.reports
        .filter(({ duty }) => duty.outcome === 'required' && !isNotice(duty))
        .map(({ duty, reporter: { vessel } }) => ({
          ...dutySubject(duty, vessel),
          changes: at.reopened.flatMap((one) =>
            one.duty === duty.id && one.vessel === vessel ? one.changes : [],
          ),
        }));
    case 'promise':
      return situation.promises.map(({ contact, party, at: from, by }) => ({
        key: [contact],
        words: { party: PARTY_WORDS[party] },
        from,
        by,
      }));
    case 'claims-clock':
      return at.clocks.flatMap(({ id, name, citation, endsAt }) =>
        endsAt === null
          ? []
          : [{ key: [id], words: { clock: name }, citations: citation, from: Date.parse(endsAt) }],
      );
    case 'rental-record':
      return (at.rentalRecords ?? []).map(({ jurisdiction, name, law, citation }) => ({
        key: [jurisdiction],
        words: { state: name, law },
        ...(citation !== null && { citations: citation }),
      }));
    case 'request':
    case 'unread-request':
    case 'request-for-counsel':
    case 'request-to-object':
      return requestSubjects(template.for, at.requests ?? [], at.zone);
  }
}

const PARTY_WORDS = {
  renter: 'the renter',
  family: 'the family',
  'other-party': 'the other party',
  witness: 'a witness',
  insurer: 'the insurer',
  agency: 'an agency',
  lawyer: 'a lawyer',
  press: 'the press',
  other: 'somebody',
} as const;

/** While it is not known which craft it was, or whether it was ours, one task stands for all of them. */
function craftOf({ ownCraft, facts }: Situation): Subject[] {
  if (facts['own-craft'] === 'false') return [];
  if (ownCraft.length === 0) return [{ key: [], words: { craft: 'our craft' } }];
  return ownCraft.map(({ key, name }) => ({ key: [key], words: { craft: name } }));
}

function isNotice(duty: Duty): boolean {
  return duty.immediate || formOf(duty) === 'notice';
}

/** A notice and a question are about the occurrence, whichever craft it was: one of each duty is enough. */
function dutiesOf(reports: readonly OwedReport[], isMeant: (duty: Duty) => boolean): Subject[] {
  const duties = new Map(reports.map(({ duty }) => [duty.id, duty]));
  return [...duties.values()].filter(isMeant).map((duty) => dutySubject(duty, null));
}

function conductOf({ conduct = [] }: FollowUpCase, outcome: Duty['outcome']): Subject[] {
  return conduct.filter((duty) => duty.outcome === outcome).map((duty) => dutySubject(duty, null));
}

function dutySubject(duty: Duty, vessel: string | null): Subject {
  const about = `${nameKind(duty.kind)} (${nameJurisdiction(duty.jurisdiction)})`;
  return {
    key: vessel === null ? [duty.id] : [duty.id, vessel],
    words: {
      duty: vessel === null ? about : `${about} for ${vessel}`,
      to: duty.authority ?? 'the state’s boating law administrator',
    },
    ...(duty.citations.length > 0 && { citations: duty.citations.join('; ') }),
    duty,
  };
}

function dueOf(
  due: DueRule,
  { duty, from, by }: Subject,
  learnedAt: number,
  clock: ZoneClock,
): { readonly at: number | null; readonly why: string } {
  switch (due.rule) {
    case 'at-once':
      return { at: learnedAt, why: 'At once.' };
    case 'hours-after-learning':
      return { at: plusHours(learnedAt, due.hours), why: `${due.hours} hours after we learned of it.` };
    case 'same-day':
      return { at: clock.nextMidnight(learnedAt) - 60_000, why: 'The day on which we learned of it.' };
    case 'as-promised':
      return typeof by === 'number'
        ? { at: by, why: 'When it was promised for.' }
        : {
            at: plusHours(from ?? learnedAt, due.elseHours),
            why: `${due.elseHours} hours after it was promised; nobody said for when.`,
          };
    case 'days-before-clock':
      return {
        at: from === undefined ? null : clock.plusCalendarDays(from, -due.days),
        why: `${due.days} days before the clock runs out.`,
      };
    case 'as-asked':
      return typeof by === 'number'
        ? { at: by, why: 'The time that the paper, or the law about it, gives.' }
        : { at: null, why: 'Nobody has stated a time: treat it as due now.' };
    case 'hours-after-receipt':
      return {
        at: plusHours(from ?? learnedAt, due.hours),
        why: `${due.hours} hours after the paper came.`,
      };
    case 'duty': {
      const instant = duty === undefined ? null : earliestDue(duty);
      const basis = duty?.dueBasis ?? 'No time is known: treat it as due now.';
      return {
        at: instant === null ? null : plusHours(Date.parse(instant), due.plusHours),
        why: due.plusHours === 0 ? basis : `${due.plusHours} hours after: ${basis}`,
      };
    }
  }
}

/** A time that nobody has read counts as short. */
function isShort(
  { for: reach, due }: TaskTemplate,
  dueAt: number | null,
  learnedAt: number,
  duty: Duty | undefined,
): boolean {
  if (due.rule !== 'duty' || due.plusHours > 0 || reach === 'open-duty' || duty === undefined) return false;
  return (
    duty.immediate ||
    duty.telephone !== undefined ||
    dueAt === null ||
    dueAt <= plusHours(learnedAt, SHORTEST_HOURS)
  );
}

function triggersOf(duty: Duty | undefined): string[] {
  return (duty?.reasons ?? []).flatMap(({ trigger, value }) =>
    value === 'true' && !trigger.startsWith('applies/') ? [trigger.replaceAll('-', ' ')] : [],
  );
}

function restsOn(
  { restsOn: what }: TaskTemplate,
  { people, harm }: Situation,
  { duty, changes = [] }: Subject,
): string[] {
  switch (what) {
    case 'nothing':
      return [];
    case 'people':
      return people.map((id) => `person ${id}`);
    case 'harm':
      return [...harm];
    case 'duty':
      return [...triggersOf(duty), ...changes];
    case 'request':
      return [...changes];
  }
}
