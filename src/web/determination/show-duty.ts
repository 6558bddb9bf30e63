import type { Duty, Question, Reason } from '../../../shared/determination/determination.js';
import {
  BASIS_SENTENCES,
  clockOf,
  nameJurisdiction,
  nameKind,
  OUTCOME_WORDS,
  TRUTH_WORDS,
  whatToDo,
} from '../../../shared/determination/duty-words.js';
import { localTime, timeLeft } from '../../../shared/time/tell-time.js';
import { element } from '../look/element.js';
import { sign } from '../look/sign.js';

/** One duty: the outcome as sign and word, what to do, by when, who, what is unknown, and why. */
export function showDuty(duty: Duty, now: number): HTMLElement {
  return element(
    'article',
    { class: `duty ${duty.outcome}` },
    element(
      'h3',
      {},
      element('span', { class: 'outcome' }, sign(duty.outcome), OUTCOME_WORDS[duty.outcome]),
      ' ',
      element('span', { class: 'title' }, `${nameKind(duty.kind)}, ${nameJurisdiction(duty.jurisdiction)}`),
    ),
    showClock(duty, now),
    element('p', { class: 'to-do' }, whatToDo(duty)),
    showReporters(duty),
    showQuestions(duty.questions),
    showReasons(duty),
  );
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
    element('p', { class: 'aside' }, `${BASIS_SENTENCES[packBasis]} ${citations.join('; ')}`),
  );
}

function showReason({ value, text, citation }: Reason): HTMLElement {
  return element(
    'li',
    {},
    element('span', { class: 'value' }, sign(value), TRUTH_WORDS[value]),
    element('span', {}, text, ' ', citation === undefined ? null : element('cite', {}, citation)),
  );
}

function part(title: string, content: HTMLElement): HTMLElement {
  return element('section', { class: 'part' }, element('h4', {}, title), content);
}
