import { isOtherMatter } from '../determination/duty-kinds.js';
import type { IncidentFacts } from '../record/incident-facts.js';
import { localTime } from '../time/tell-time.js';
import { earliestDue, type Change, type DecisionRules, type SignedBy } from './decision.js';
import { formOf } from './judge-filing.js';
import type { OwedReport } from './owed-report.js';

/** What the operator says about the report: made, not made, or nothing was said. */
export type SaysFiled = 'yes' | 'no' | 'unknown';
export const SAYS_FILED: readonly SaysFiled[] = ['yes', 'no', 'unknown'];

/** That somebody told the operator of a craft of the duty to report, or did not, and what the operator says. */
export interface OperatorNotice {
  readonly id: string;
  /** Id of the craft; null while none is named. */
  readonly vessel: string | null;
  /** RFC 3339. */
  readonly at: string;
  readonly told: 'yes' | 'no';
  /** Name of the person who told them, or who knows that nobody did. */
  readonly toldBy: string;
  /** In which way, such as in person, by mail or by phone. */
  readonly way?: string;
  readonly saysFiled: SaysFiled;
  /** RFC 3339: when, by the operator's word. */
  readonly filedAt?: string;
  readonly confirmation?: string;
  readonly words?: string;
  readonly by: SignedBy;
  readonly recordedAt: string;
}

export interface OperatorProposal {
  readonly code: 'TELL_OPERATOR' | 'ASK_OPERATOR' | 'CONFIRM_FILING' | 'OWNER_REPORTS';
  readonly text: string;
}

export interface OperatorQuestion {
  readonly report: OwedReport;
  readonly facts: Pick<IncidentFacts, 'vessels' | 'people'>;
  /** About this craft, the oldest first. */
  readonly notices: readonly OperatorNotice[];
  readonly filed: boolean;
  /** Epoch milliseconds. */
  readonly now: number;
  readonly rules: DecisionRules;
}

const LOST: ReadonlySet<string> = new Set(['died', 'missing', 'not-back']);
const HOUR_MS = 3_600_000;
const OWNER = 'File the owner’s own report, on what is known (33 CFR 173.55(c)).';

/**
 * What a person does next about the customer who drove; null where there is nothing. Nothing here sends anything: a
 * person tells the operator, and never somebody who has lost someone.
 * @example proposeOperatorNotice({ …, notices: [], now: clock - 100 * 3_600_000 })?.code // 'TELL_OPERATOR'
 * @example proposeOperatorNotice({ …, facts: { vessels, people: [{ …, outcome: 'died' }] } })?.code // 'OWNER_REPORTS'
 */
export function proposeOperatorNotice(question: OperatorQuestion): OperatorProposal | null {
  const { report, facts, notices, filed, now, rules } = question;
  const { duty, reporter } = report;
  const vessel = facts.vessels.find(({ id }) => id === reporter.vessel);
  // Somebody who works here reports as the business does: only customers are told.
  const customer = (vessel === undefined || vessel.use === 'rental') && !isOtherMatter(duty);
  if (filed || duty.outcome === 'not-required' || formOf(duty) !== 'report' || !customer) return null;
  if (isBereaved(facts, reporter.vessel)) {
    return {
      code: 'OWNER_REPORTS',
      text: `Somebody aboard died, is missing or is not back: send the family no notice. ${OWNER}`,
    };
  }
  if (reporter.who === 'owner')
    return { code: 'OWNER_REPORTS', text: `The operator cannot report. ${OWNER}` };
  const due = earliestDue(duty);
  const said = notices.findLast(({ saysFiled }) => saysFiled !== 'unknown')?.saysFiled ?? 'unknown';
  if (said === 'yes') {
    const text =
      'The operator says that it was filed: confirm that with the authority, and record the filing.';
    return {
      code: 'CONFIRM_FILING',
      text: atLead(due, now, rules) ? `${text} Unconfirmed by now: ${OWNER}` : text,
    };
  }
  if (said === 'no' || atLead(due, now, rules)) {
    const why =
      said === 'no'
        ? 'The operator says that it was not filed.'
        : 'The operator has not said that it was filed.';
    return { code: 'OWNER_REPORTS', text: `${why} ${OWNER}` };
  }
  const by = due === null ? '' : ` by ${localTime(due, now)}`;
  const must = duty.outcome === 'required' ? 'The operator must' : 'If it is required, the operator must';
  return notices.some(({ told }) => told === 'yes')
    ? { code: 'ASK_OPERATOR', text: `The operator was told. Ask${by} whether it was filed.` }
    : {
        code: 'TELL_OPERATOR',
        text: `${must} report${by}: somebody tells them, and asks for the confirmation.`,
      };
}

function atLead(due: string | null, now: number, { leadHours }: DecisionRules): boolean {
  return due === null || now >= Date.parse(due) - leadHours * HOUR_MS;
}

/** Somebody aboard the craft, or aboard nobody knows which, died, is missing or is not back. */
export function isBereaved({ people }: Pick<IncidentFacts, 'people'>, vessel: string | null): boolean {
  return people.some(
    (person) =>
      LOST.has(person.outcome) &&
      (vessel === null || person.vessel === undefined || person.vessel === vessel),
  );
}

/**
 * What is new in the operator's word, as a change that reopens what was signed; null when it was said before.
 * @example operatorChange([], { …, saysFiled: 'yes' })?.what // 'operator-says'
 */
export function operatorChange(
  before: readonly Pick<OperatorNotice, 'saysFiled'>[],
  { saysFiled, filedAt }: Pick<OperatorNotice, 'saysFiled' | 'filedAt'>,
): Change | null {
  const last = before.findLast((notice) => notice.saysFiled !== 'unknown')?.saysFiled ?? 'unknown';
  if (saysFiled === 'unknown' || saysFiled === last) return null;
  if (saysFiled === 'no')
    return { what: 'operator-says', text: 'The operator says that the report was not filed.' };
  const when = filedAt === undefined ? '' : ` at ${filedAt}`;
  const text = `The operator says that the report was filed${when}: nobody has confirmed that yet.`;
  return { what: 'operator-says', text };
}
