import { useId, useLayoutEffect, useRef } from 'preact/hooks';
import { Button } from '../look/button.js';
import { ThreeWay } from '../look/choice.js';
import { call as say } from '../words/call.js';
import { common as inRecord } from '../words/en/common.js';
import { callInRecord } from '../words/en/call-in-record.js';
import type { Ternary } from '../../../shared/kernel/truth.js';
import type { Entry, Step } from './call-draft.js';
import { CallerStep } from './caller-step.js';
import { CraftStep } from './craft-step.js';
import { HappenedStep } from './happened-step.js';
import { PeopleCount } from './people-count.js';
import { withAnswer, withLine, withPassed } from './change-draft.js';
import type { CallHands } from './use-call.js';
import type { Choices } from './use-choices.js';
import { WhereStep } from './where-step.js';

interface AskStepProps {
  readonly step: Step;
  readonly hands: CallHands;
  readonly choices: Choices;
}

/** The question of the moment, and the way past it. */
export function AskStep({ step, hands, choices }: AskStepProps) {
  const id = useId();
  const section = useRef<HTMLElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const isFirst = hands.draft === null;
  // Before the question is painted, and at once: answers that still move would be pressed in each other's place.
  useLayoutEffect(() => {
    if (isFirst) return;
    // What was pressed is gone; without this a keyboard and a screen reader would begin again at the top.
    heading.current?.focus({ preventScroll: true });
    section.current?.scrollIntoView({ block: 'nearest', behavior: 'instant' });
  }, []);
  return (
    <section class="ask-step" aria-labelledby={id} ref={section}>
      <h2 id={id} ref={heading} tabIndex={-1}>
        {questionOf(step, hands.entry)}
      </h2>
      <Question step={step} hands={hands} choices={choices} />
      <Button look="plain" onPress={() => hands.pass(step)}>
        {say.skip}
      </Button>
    </section>
  );
}

function questionOf(step: Step, entry: Entry): string {
  if (step === 'where') return entry === 'now' ? say.ask.here : say.ask.where;
  return step === 'happened' && entry === 'check-in' ? say.ask.found : say.ask[step];
}

function Question({ step, hands, choices }: AskStepProps) {
  const { draft } = hands;
  const answerThis = (question: 'accounted' | 'hurt') => (value: Ternary) =>
    void hands.change((before, now) =>
      withPassed(
        withLine(
          withAnswer(before, question, value, now),
          callInRecord[question](inRecord.answer[value]),
          now,
        ),
        question,
      ),
    );
  switch (step) {
    case 'craft':
      return <CraftStep hands={hands} choices={choices} />;
    case 'where':
      return <WhereStep hands={hands} choices={choices} />;
    case 'accounted':
      return (
        <>
          <PeopleCount hands={hands} />
          <ThreeWay
            legend={say.ask.accounted}
            quietLegend
            atOnce
            value={draft?.answers.accounted?.value}
            onChoose={answerThis('accounted')}
          />
        </>
      );
    case 'hurt':
      return (
        <ThreeWay
          legend={say.ask.hurt}
          quietLegend
          atOnce
          hint={say.hurt.hint}
          value={draft?.answers.hurt?.value}
          onChoose={answerThis('hurt')}
        />
      );
    case 'happened':
      return <HappenedStep hands={hands} />;
    case 'caller':
      return <CallerStep hands={hands} />;
  }
}
