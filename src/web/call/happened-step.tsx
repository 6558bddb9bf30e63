import { useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { call as say } from '../words/call.js';
import { call as inRecord } from '../words/en/call.js';
import { callInRecord } from '../words/en/call-in-record.js';
import { withAnswer, withLine, withPassed } from './change-draft.js';
import type { CallHands } from './use-call.js';

const NONE = 'none';

/** What happened, as a plain word of which the record keeps the federal one, and in the caller's own words. */
export function HappenedStep({ hands }: { hands: CallHands }) {
  const { answers } = hands.draft ?? { answers: undefined };
  const [said, setSaid] = useState(answers?.said?.value ?? '');
  const withWords = hands.entry === 'check-in';
  const keepWords = (): void => {
    if (said.trim() === '' || said === answers?.said?.value) return;
    hands.answer('said', said, callInRecord.words(said));
  };
  const choose = (kind: string): void => {
    const slug = kind === NONE ? null : kind;
    const words = inRecord.happened.kinds[kind] ?? inRecord.happened.none;
    void hands.change((before, now) =>
      withPassed(
        withLine(withAnswer(before, 'happened', slug, now), callInRecord.happened(words), now),
        'happened',
      ),
    );
  };
  const happened = answers?.happened?.value;
  return (
    <>
      {!withWords && (
        <Choice
          legend={say.ask.happened}
          quietLegend
          atOnce
          value={happened === null ? NONE : happened}
          options={[
            ...Object.entries(say.happened.kinds).map(([value, label]) => ({ value, label })),
            { value: NONE, label: say.happened.none },
          ]}
          onChoose={(kind) => {
            keepWords();
            choose(kind);
          }}
        />
      )}
      <Field
        label={say.happened.said}
        hint={say.happened.saidHint}
        value={said}
        onInput={setSaid}
        onBlur={keepWords}
        rows={3}
      />
      {said.trim() !== '' && (
        <Button
          look="main"
          onPress={() => {
            keepWords();
            hands.pass('happened');
          }}
        >
          {say.next}
        </Button>
      )}
    </>
  );
}
