import type { Duty, Question, Reason } from '../../../shared/determination/determination.js';
import { element } from '../look/element.js';
import { sign } from '../look/sign.js';
import { localTime, timeLeft } from '../look/tell-time.js';
import { BASES, nameOfJurisdiction, nameOfKind, OUTCOMES, TRUTHS } from './words.js';

/** One duty: the outcome as sign and word, what to do, by when, who, what is unknown, and why. */
export function showDuty(duty: Duty, now: number): HTMLElement {
  const { word, fill } = OUTCOMES[duty.outcome];
  return element(
    'article',
    { class: `duty ${duty.outcome}` },
    element(
      'h3',
      {},
      element('span', { class: 'outcome' }, sign(fill), word),
      ' ',
      element(
        'span',
        { class: 'title' },
        `${nameOfKind(duty.kind)}, ${nameOfJurisdiction(duty.jurisdiction)}`,
      ),
    ),
    showClock(duty, now),
    element('p', { class: 'to-do' }, whatToDo(duty)),
    showReporters(duty),
    showQuestions(duty.questions),
    showReasons(duty),
  );
}

/** The deadline that counts for a duty as it stands: its own, or the one that it would have. */
export function clockOf(duty: Duty): string | null {
  return duty.dueAt ?? duty.dueAtIfRequired;
}

function whatToDo({ outcome, authority, immediate, questions }: Duty): string {
  const addressee = authority ?? 'the state’s boating law administrator';
  if (outcome === 'not-required')
    return 'Nothing to report on these facts. If the facts change, determine again.';
  if (outcome === 'required')
    return `Report to: ${addressee}.${immediate ? ' Do it now, without delay.' : ''}`;
  const first = questions.length > 0 ? 'Answer what is asked below' : 'Ask the agency';
  return `${first}; until then be ready to report to: ${addressee}.${immediate ? ' If it is required, it is due now.' : ''}`;
}

function showClock(duty: Duty, now: number): HTMLElement | null {
  const due = clockOf(duty);
  if (due === null) {
    return duty.outcome === 'undetermined'
      ? element(
          'p',
          { class: 'clock' },
          element('strong', {}, 'Ask now'),
          element('span', {}, 'No deadline is known.'),
        )
      : null;
  }
  const earlier =
    duty.dueAt !== null && duty.dueAtIfRequired !== null
      ? `An open question could bring it forward to ${localTime(duty.dueAtIfRequired, now)}.`
      : null;
  return element(
    'p',
    { class: duty.immediate ? 'clock immediate' : 'clock' },
    element('strong', {}, duty.immediate ? 'At once' : timeLeft(due, now)),
    element(
      'span',
      {},
      `${duty.immediate ? 'counted from' : 'by'} ${localTime(due, now)}${duty.dueAt === null ? ', if it is required' : ''}`,
    ),
    duty.dueBasis === null ? null : element('span', { class: 'aside' }, sentence(duty.dueBasis)),
    earlier === null ? null : element('span', { class: 'aside' }, earlier),
  );
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function showReporters({ outcome, reporters }: Duty): HTMLElement | null {
  if (outcome === 'not-required' || reporters.length === 0) return null;
  return part(
    'Who reports',
    element(
      'ul',
      { class: 'reporters' },
      ...reporters.map(({ vessel, text }) =>
        element('li', {}, vessel === null ? null : element('strong', {}, `${vessel}: `), text),
      ),
    ),
  );
}

function showQuestions(questions: readonly Question[]): HTMLElement | null {
  if (questions.length === 0) return null;
  return part(
    questions.length === 1 ? 'What would settle it' : 'What could change it, the most telling first',
    element(
      'ol',
      { class: 'questions' },
      ...questions.map(({ fact, text }) =>
        element(
          'li',
          {},
          text,
          ' ',
          fact === null
            ? element('span', { class: 'aside' }, 'A point of law: ask the agency or counsel.')
            : element('code', {}, fact),
        ),
      ),
    ),
  );
}

function showReasons({ reasons, citations, packBasis }: Duty): HTMLElement {
  return element(
    'details',
    {},
    element(
      'summary',
      {},
      `Why: ${reasons.length} ${reasons.length === 1 ? 'point' : 'points'} of the law looked at`,
    ),
    element('ul', { class: 'reasons' }, ...reasons.map(showReason)),
    element('p', { class: 'aside' }, `${BASES[packBasis]} ${citations.join('; ')}`),
  );
}

function showReason({ value, text, citation }: Reason): HTMLElement {
  const { word, fill } = TRUTHS[value];
  return element(
    'li',
    {},
    element('span', { class: 'value' }, sign(fill), word),
    element('span', {}, text, ' ', citation === undefined ? null : element('cite', {}, citation)),
  );
}

function part(title: string, content: HTMLElement): HTMLElement {
  return element('section', { class: 'part' }, element('h4', {}, title), content);
}
