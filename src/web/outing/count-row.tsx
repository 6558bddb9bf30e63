import { useState } from 'preact/hooks';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { tellClock } from '../look/tell-instant.js';
import { closingCount as say } from '../words/closing-count.js';
import { outAndBack } from '../words/out-and-back.js';
import type { CountedCraft } from './count-answers.js';
import type { CountAnswer } from './service-answers.js';

interface CountRowProps {
  readonly craft: CountedCraft;
  readonly onAnswer: (answer: CountAnswer, where: string | null) => void;
}

const ANSWERS: readonly CountAnswer[] = ['in', 'out', 'elsewhere'];

/** One craft: in, out or elsewhere. It stays where it is when it was answered, so that no thumb lands on the next one. */
export function CountRow({ craft, onAnswer }: CountRowProps) {
  const { unitName, colours, answer, where, dueBackAt, askedAgain, onlyHere } = craft;
  const [asking, setAsking] = useState(false);
  const press = (pressed: CountAnswer): void => {
    setAsking(pressed === 'elsewhere');
    if (pressed !== 'elsewhere') onAnswer(pressed, null);
  };
  const about = [
    dueBackAt !== null && say.dueAt(tellClock(dueBackAt)),
    answer === 'elsewhere' && where,
    answer === 'answered' && say.answered,
    askedAgain && say.again,
  ].filter(Boolean);
  return (
    <li class="count-row">
      <h2>
        {unitName} <small>{colours.join(', ')}</small>
      </h2>
      <div class="count-answers" role="group" aria-label={unitName}>
        {ANSWERS.map((one) => (
          <Button
            key={one}
            label={say.answerOf(say[one], unitName)}
            pressed={answer === one}
            onPress={() => press(one)}
          >
            {say[one]}
          </Button>
        ))}
      </div>
      {(about.length > 0 || onlyHere) && (
        <p class="quiet">
          {about.join(' · ')} {onlyHere && <span class="only-here">{outAndBack.onlyHere}</span>}
        </p>
      )}
      {asking && (
        <WhereForm
          before={where ?? ''}
          onKeep={(words) => {
            setAsking(false);
            onAnswer('elsewhere', words);
          }}
        />
      )}
    </li>
  );
}

function WhereForm({ before, onKeep }: { before: string; onKeep: (words: string) => void }) {
  const [words, setWords] = useState(before);
  const [looked, setLooked] = useState(false);
  const keep = (event: Event): void => {
    event.preventDefault();
    setLooked(true);
    if (words.trim() !== '') onKeep(words.trim());
  };
  return (
    <form class="form" onSubmit={keep} noValidate>
      <Field
        label={say.where}
        hint={say.whereHint}
        value={words}
        onInput={setWords}
        autoComplete="off"
        error={looked && words.trim() === '' ? say.whereMissing : null}
      />
      <Button type="submit">{say.keepWhere}</Button>
    </form>
  );
}
