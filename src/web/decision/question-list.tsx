import { useEffect, useRef, useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { Section } from '../look/section.js';
import { useSession } from '../session/session.js';
import { decision as say } from '../words/decision.js';
import { AnswerForm } from './answer-form.js';
import { placeOf, sectionOf } from './fact-place.js';
import type { AskedQuestion } from './list-questions.js';
import type { Matter } from './use-matter.js';
import type { WhatIf } from './use-what-if.js';

interface QuestionListProps {
  readonly matter: Matter;
  readonly questions: readonly AskedQuestion[];
  readonly whatIf: WhatIf;
  /** Anchor of the question that somebody came for, and how often they did. */
  readonly sought: { readonly anchor: string; readonly times: number } | null;
}

/** What is not known, once each, each to be answered where it stands. */
export function QuestionList({ matter, questions, whatIf, sought }: QuestionListProps) {
  const [saved, setSaved] = useState<{ readonly text: string } | null>(null);
  const note = useRef<HTMLParagraphElement>(null);
  // The question that was answered is gone, and the focus with it.
  useEffect(() => note.current?.focus(), [saved]);
  return (
    <Section title={say.questions.title}>
      {saved !== null && (
        <p class="note saved" role="status" tabIndex={-1} ref={note}>
          {say.questions.saved(saved.text)}
        </p>
      )}
      {questions.length === 0 ? (
        <p>{say.questions.none}</p>
      ) : (
        <>
          <p class="quiet">{say.questions.lead}</p>
          <ol class="asked">
            {questions.map((question) => (
              <li key={`${question.fact} ${question.text}`}>
                <QuestionItem
                  matter={matter}
                  question={question}
                  whatIf={whatIf}
                  onSaved={(text) => setSaved({ text })}
                  soughtTimes={sought?.anchor === question.anchor ? sought.times : 0}
                />
              </li>
            ))}
          </ol>
        </>
      )}
    </Section>
  );
}

interface QuestionItemProps extends Pick<QuestionListProps, 'matter' | 'whatIf'> {
  readonly question: AskedQuestion;
  readonly soughtTimes: number;
  readonly onSaved: (text: string) => void;
}

/** One question, and the way to answer it. */
export function QuestionItem({ matter, question, whatIf, onSaved, soughtTimes }: QuestionItemProps) {
  const details = useRef<HTMLDetailsElement>(null);
  useEffect(() => {
    if (soughtTimes === 0 || details.current === null) return;
    details.current.open = true;
    details.current.scrollIntoView({ block: 'start' });
    details.current.querySelector('summary')?.focus({ preventScroll: true });
  }, [soughtTimes]);
  return (
    <details id={question.anchor} ref={details}>
      <summary>{question.text}</summary>
      <p class="quiet">{say.questions.decides(question.duties.join('; '))}</p>
      <Way matter={matter} question={question} whatIf={whatIf} onSaved={onSaved} />
    </details>
  );
}

function Way({ matter, question: { fact, text }, whatIf, onSaved }: Omit<QuestionItemProps, 'soughtTimes'>) {
  const role = useSession().me?.role;
  if (fact === null) return <p>{say.questions.ofLaw}</p>;
  const { facts } = matter.determined;
  const place = placeOf(fact, facts);
  if (place === null) {
    return (
      <>
        <p>{say.questions.elsewhere}</p>
        <p>
          <Link class="button" href={`/incidents/${matter.id}/record/${sectionOf(fact, facts)}`}>
            {say.questions.openSection}
          </Link>
        </p>
      </>
    );
  }
  return (
    <AnswerForm
      matter={matter}
      place={place}
      label={text}
      mayWrite={role !== undefined && role !== 'counsel'}
      onSaved={() => onSaved(text)}
      onTry={(value) => whatIf.add({ pointer: fact, value })}
    />
  );
}
