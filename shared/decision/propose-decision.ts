import { localTime } from '../time/tell-time.js';
import { type Decision, earliestDue, type DecisionRules } from './decision.js';
import type { OwedReport } from './owed-report.js';

export type ProposalCode =
  | 'SUPPLEMENT'
  | 'NOTHING_DUE'
  | 'ASK_NOW'
  | 'WITHOUT_DELAY'
  | 'LIMIT_PASSED_BEFORE_KNOWN'
  | 'LIMIT_PASSED'
  | 'LEAD_TIME'
  | 'REPORT'
  | 'WAIT_FOR_ANSWERS';

/** What the product proposes to sign. A person decides. */
export interface Proposal {
  readonly code: ProposalCode;
  readonly kind: 'report' | 'wait' | 'no-report' | 'ask';
  readonly text: string;
  /** RFC 3339: until when to wait, or by when it is due; null where there is no such time. */
  readonly until: string | null;
}

export interface ProposalQuestion {
  readonly report: OwedReport;
  readonly filed: boolean;
  readonly supplementDue: boolean;
  /** The decision that stands. */
  readonly decision: Decision | null;
  /** Why a call to the agency or counsel comes before "no report due", in a sentence; empty when none is needed. */
  readonly callFirst: string;
  /** RFC 3339: when the record first showed this clock. */
  readonly knownAt: string;
  /** Epoch milliseconds. */
  readonly now: number;
  readonly rules: DecisionRules;
}

const HOUR_MS = 3_600_000;

/**
 * The proposal for a report as it stands; null once it is filed, once it was signed that nothing is due, and while
 * somebody has signed to wait.
 * @example proposeDecision({ …, now: clock - 23 * 3_600_000 })?.code // 'LEAD_TIME'
 */
export function proposeDecision(question: ProposalQuestion): Proposal | null {
  const { report, filed, supplementDue, decision, now, callFirst } = question;
  const { outcome } = report.duty;
  if (supplementDue) {
    return say(
      'SUPPLEMENT',
      'report',
      'What was filed is no longer how it stands: supplement the filed report.',
    );
  }
  if (filed || decision?.kind === 'no-report') return null;
  if (decision?.kind === 'wait' && now < Date.parse(decision.until)) return null;
  if (outcome === 'not-required') {
    const text = 'No report is due on the facts as they stand';
    return callFirst === ''
      ? say('NOTHING_DUE', 'no-report', `${text}: sign that, so that it is decided.`)
      : say(
          'NOTHING_DUE',
          'no-report',
          `${text}. ${callFirst} Call the agency or counsel and log it, then sign.`,
        );
  }
  const due = earliestDue(report.duty);
  if (due === null) {
    return say('ASK_NOW', 'ask', 'No clock is known for it: ask the agency now, and log what was said.');
  }
  return proposeByClock(question, due);
}

function proposeByClock({ report, knownAt, now, rules }: ProposalQuestion, due: string): Proposal {
  const { duty } = report;
  const sooner = due === duty.dueAt ? '' : 'By what is still open, ';
  const maybe = duty.outcome === 'required' ? sooner : 'If it is required, ';
  const clock = Date.parse(due);
  const when = localTime(due, now);
  const act = (code: ProposalCode, text: string): Proposal =>
    say(code, 'report', sentence(`${maybe}${text}`), due);
  if (duty.immediate) {
    return act(
      'WITHOUT_DELAY',
      'it is due without delay: report now, on what is known, and supplement it later.',
    );
  }
  if (now > clock) {
    return Date.parse(knownAt) > clock
      ? act('LIMIT_PASSED_BEFORE_KNOWN', `the limit passed before we knew, on ${when}: report now.`)
      : act('LIMIT_PASSED', `the limit passed on ${when}: report now.`);
  }
  const lead = clock - rules.leadHours * HOUR_MS;
  if (now >= lead) {
    return act('LEAD_TIME', `it is due by ${when}: report now, on what is known, and supplement it later.`);
  }
  if (duty.outcome === 'required') return act('REPORT', `it is due by ${when}: report.`);
  const until = new Date(lead).toISOString();
  const text = `It is not known yet whether it is due; it could be, by ${when}. Wait for the answers until ${rules.leadHours} hours before, then report on what is known.`;
  return say('WAIT_FOR_ANSWERS', 'wait', text, until);
}

function say(
  code: ProposalCode,
  kind: Proposal['kind'],
  text: string,
  until: string | null = null,
): Proposal {
  return { code, kind, text, until };
}

/** `sentence('it is due')` is `'It is due'`. */
function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
