import type { ComponentChildren } from 'preact';
import { earliestDue } from '../../../shared/decision/decision.js';
import { nameJurisdiction, nameKind } from '../../../shared/determination/duty-words.js';
import { Button } from '../look/button.js';
import { Deadline } from '../look/deadline.js';
import { DefinitionRows } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as say } from '../words/decision.js';
import { DutyReasons } from './duty-reasons.js';
import { type AskedQuestion, isSettled, questionKey } from './list-questions.js';
import type { DutyView } from './service-answers.js';
import { StandingDecision } from './standing-decision.js';
import { dutyBehind, type Matter } from './use-matter.js';

interface DutyCardProps {
  readonly matter: Matter;
  readonly view: DutyView;
  readonly questions: readonly AskedQuestion[];
  readonly onSeek: (anchor: string) => void;
  /** What can be done about it: signing, filing. */
  readonly children: ComponentChildren;
}

/** One report: whether it is due, by when, who makes it to whom, what is proposed and signed, what is open, and why. */
export function DutyCard({ matter, view, questions, onSeek, children }: DutyCardProps) {
  const duty = dutyBehind(matter, view);
  const zone = matter.determined.determination.timeZone;
  return (
    <article class={`duty ${view.outcome}`} aria-labelledby={anchorOf(view)}>
      <h3 id={anchorOf(view)}>
        <span class="outcome">
          <Sign of={view.outcome} />
          {say.outcomes[view.outcome]}
        </span>{' '}
        <span class="title">{titleOf(view)}</span>
      </h3>
      <DutyClock view={view} zone={zone} />
      <p class="state">
        <strong>{say.states[view.state]}.</strong>{' '}
        {duty === undefined
          ? say.gone
          : view.state !== 'filed' &&
            view.proposal !== null && (
              <span>
                {say.proposed}: {view.proposal.text}
              </span>
            )}
      </p>
      {view.decision !== null && <StandingDecision decision={view.decision} zone={zone} />}
      {view.outcome !== 'not-required' && (
        <DefinitionRows
          rows={[
            { term: say.who, value: view.reporter.text },
            { term: say.whom, value: view.authority ?? say.nobodyNamed },
            ...(view.operator === null ? [] : [{ term: say.operator, value: view.operator.text }]),
          ]}
        />
      )}
      {view.callFirst !== null && view.state !== 'filed' && (
        <p>
          <strong>{say.callFirst}.</strong> {view.callFirst} {say.callFirstAbout}
        </p>
      )}
      <OpenQuestions view={view} questions={questions} onSeek={onSeek} />
      {duty !== undefined && <DutyReasons matter={matter} duty={duty} />}
      {children}
    </article>
  );
}

/** `Accident report, Texas (PWC-7)`. */
export function titleOf({ kind, jurisdiction, vessel }: DutyView): string {
  return `${nameKind(kind)}, ${nameJurisdiction(jurisdiction)}${vessel === null ? '' : ` (${vessel})`}`;
}

function anchorOf({ duty, vessel }: DutyView): string {
  return `duty-${duty.replaceAll('/', '-')}-${vessel ?? ''}`;
}

function DutyClock({ view, zone }: { view: DutyView; zone: string }) {
  const due = earliestDue(view);
  if (isSettled(view)) return <p class="clock quiet">{say.settled}</p>;
  if (due === null) {
    return (
      <p class="clock">
        <strong>{say.noClock}</strong>
        <span>{say.noClockAbout}</span>
      </p>
    );
  }
  const maybe = view.dueAt === null ? `, ${say.ifRequired}` : '';
  if (view.immediate) {
    return (
      <p class="clock immediate">
        <strong>{say.atOnce}</strong>
        <span>{`${say.countedFrom(tellInstant(due, zone))}${maybe}`}</span>
      </p>
    );
  }
  const sooner = view.dueAt !== null && due !== view.dueAt;
  const passedUnknown = view.proposal?.code === 'LIMIT_PASSED_BEFORE_KNOWN';
  const notes = [
    passedUnknown ? say.passedBeforeKnown : '',
    view.dueAt === null ? `${say.ifRequired}.` : '',
    view.dueBasis === null ? '' : `${view.dueBasis}.`,
    sooner ? say.sooner(tellInstant(due, zone)) : '',
  ].filter((text) => text !== '');
  return (
    <div class="clock">
      <Deadline at={view.dueAt ?? due} timeZone={zone} note={notes.map(sentence).join(' ')} />
    </div>
  );
}

function sentence(text: string): string {
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
}

/** In the duty's own order; each leads to where it is answered. */
function OpenQuestions({ view, questions, onSeek }: Pick<DutyCardProps, 'view' | 'questions' | 'onSeek'>) {
  if (view.questions.length === 0) return null;
  return (
    <div class="part">
      <h4>{say.openQuestions(view.questions.length)}</h4>
      <ol class="questions">
        {view.questions.map((question) => {
          const anchor = questions.find((one) => questionKey(one) === questionKey(question))?.anchor;
          return (
            <li key={questionKey(question)}>
              <span>{question.text}</span>{' '}
              {anchor !== undefined && (
                <Button
                  look="plain"
                  label={`${say.toQuestion}: ${question.text}`}
                  onPress={() => onSeek(anchor)}
                >
                  {say.toQuestion}
                </Button>
              )}
            </li>
          );
        })}
      </ol>
    </div>
  );
}
