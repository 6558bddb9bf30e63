import type { ComponentChildren } from 'preact';
import type { Duty, Question } from '../../../shared/determination/determination.js';
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
import { Sign } from '../look/sign.js';

/** One duty: the outcome as sign and word, what to do, by when, who, what is unknown, and why. */
export function DutyView({ duty, now }: { duty: Duty; now: number }) {
  return (
    <article class={`duty ${duty.outcome}`}>
      <h3>
        <span class="outcome">
          <Sign of={duty.outcome} />
          {OUTCOME_WORDS[duty.outcome]}
        </span>{' '}
        <span class="title">{`${nameKind(duty.kind)}, ${nameJurisdiction(duty.jurisdiction)}`}</span>
      </h3>
      <Clock duty={duty} now={now} />
      <p class="to-do">{whatToDo(duty)}</p>
      <Reporters duty={duty} />
      <Questions questions={duty.questions} />
      <Reasons duty={duty} />
    </article>
  );
}

function Clock({ duty, now }: { duty: Duty; now: number }) {
  const due = clockOf(duty);
  if (due === null) {
    if (duty.outcome !== 'undetermined') return null;
    return (
      <p class="clock">
        <strong>Ask now</strong>
        <span>No deadline is known.</span>
      </p>
    );
  }
  const both = duty.dueAt !== null && duty.dueAtIfRequired !== null;
  return (
    <p class={duty.immediate ? 'clock immediate' : 'clock'}>
      <strong>{duty.immediate ? 'At once' : timeLeft(due, now)}</strong>
      <span>
        {`${duty.immediate ? 'counted from' : 'by'} ${localTime(due, now)}${duty.dueAt === null ? ', if it is required' : ''}`}
      </span>
      {duty.dueBasis !== null && <span class="quiet">{sentence(duty.dueBasis)}</span>}
      {both && (
        <span class="quiet">
          {`An open question could bring it forward to ${localTime(duty.dueAtIfRequired ?? '', now)}.`}
        </span>
      )}
    </p>
  );
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function Reporters({ duty: { outcome, reporters } }: { duty: Duty }) {
  if (outcome === 'not-required' || reporters.length === 0) return null;
  return (
    <Part title="Who reports">
      <ul class="reporters">
        {reporters.map(({ vessel, text }) => (
          <li key={`${vessel} ${text}`}>
            {vessel !== null && <strong>{vessel}: </strong>}
            {text}
          </li>
        ))}
      </ul>
    </Part>
  );
}

function Questions({ questions }: { questions: readonly Question[] }) {
  if (questions.length === 0) return null;
  const title =
    questions.length === 1 ? 'What would settle it' : 'What could change it, the most telling first';
  return (
    <Part title={title}>
      <ol class="questions">
        {questions.map(({ fact, text }) => (
          <li key={`${fact} ${text}`}>
            {text}{' '}
            {fact === null ? (
              <span class="quiet">A point of law: ask the agency or counsel.</span>
            ) : (
              <code>{fact}</code>
            )}
          </li>
        ))}
      </ol>
    </Part>
  );
}

function Reasons({ duty: { reasons, citations, packBasis } }: { duty: Duty }) {
  return (
    <details>
      <summary>{`Why: ${reasons.length} ${reasons.length === 1 ? 'point' : 'points'} of the law looked at`}</summary>
      <ul class="reasons">
        {reasons.map(({ value, text, citation }) => (
          <li key={`${value} ${text} ${citation ?? ''}`}>
            <span class="value">
              <Sign of={value} />
              {TRUTH_WORDS[value]}
            </span>
            <span>
              {text} {citation !== undefined && <cite>{citation}</cite>}
            </span>
          </li>
        ))}
      </ul>
      <p class="quiet">{`${BASIS_SENTENCES[packBasis]} ${citations.join('; ')}`}</p>
    </details>
  );
}

function Part({ title, children }: { title: string; children: ComponentChildren }) {
  return (
    <section class="part">
      <h4>{title}</h4>
      {children}
    </section>
  );
}
