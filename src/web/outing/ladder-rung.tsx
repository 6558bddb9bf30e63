import { useState } from 'preact/hooks';
import type { LadderRung } from '../../../shared/outing/plan-ladder.js';
import { stampInstant } from '../../../shared/call/stamp.js';
import { Button } from '../look/button.js';
import { Deadline } from '../look/deadline.js';
import { Field } from '../look/field.js';
import { Sign } from '../look/sign.js';
import { tellClock } from '../look/tell-instant.js';
import { common } from '../words/common.js';
import { notBack as say } from '../words/not-back.js';
import { outAndBack } from '../words/out-and-back.js';
import { type ShownStamp, stampRung, undoStamp } from './not-back-queue.js';
import { RungCalls } from './rung-calls.js';
import type { NotBackHere } from './use-not-back.js';

interface LadderRungProps {
  readonly rung: LadderRung;
  readonly here: NotBackHere;
  /** The one to do now. */
  readonly isNext: boolean;
}

/** A rung: whom to call by a tap, one press when it was done, and each time with the way back. */
export function LadderRungItem({ rung, here, isNext }: LadderRungProps) {
  const { known, climbed, zone } = here;
  const times = climbed.filter((one) => one.rung === rung.rung);
  const [again, setAgain] = useState(false);
  const [words, setWords] = useState('');
  const isDone = times.length > 0;
  const press = (): void => {
    setAgain(false);
    setWords('');
    void stampRung(known.id, rung.rung, words);
  };
  return (
    <li class={`rung ${isNext ? 'next' : ''}`}>
      <h3>
        <Sign of={isDone ? 'yes' : 'no'} />
        {say.ladder.rungs[rung.rung]}
      </h3>
      {!isDone && <Deadline at={rung.by} timeZone={zone} note={say.ladder.by} first={isNext} />}
      <p>{say.ladder.says(rung)}</p>
      {rung.until !== null && (
        <p>
          <strong>{say.ladder.until(tellClock(rung.until, zone))}</strong>
        </p>
      )}
      <RungCalls rung={rung.rung} here={here} />
      {isDone && (
        <ul class="stamped">
          {times.map((stamp) => (
            <StampedTime key={stamp.id} stamp={stamp} here={here} />
          ))}
        </ul>
      )}
      {isDone && !again ? (
        <Button look="plain" onPress={() => setAgain(true)}>
          {say.ladder.again}
        </Button>
      ) : (
        <div class="stamp-now unprinted">
          <Field label={say.ladder.words} value={words} onInput={setWords} autoComplete="off" />
          <Button look="main" onPress={press}>
            {say.ladder.stamp[rung.rung]}
          </Button>
        </div>
      )}
    </li>
  );
}

function StampedTime({ stamp, here: { known, zone } }: { stamp: ShownStamp; here: NotBackHere }) {
  const time = tellClock(new Date(stampInstant(stamp.stamp)).toISOString(), zone);
  return (
    <li>
      <span>
        <strong>{say.ladder.at(time, stamp.person ?? '')}</strong>
        {(stamp.words ?? '') !== '' && <span class="row-about">{stamp.words}</span>}
        {stamp.onlyHere && <span class="only-here">{outAndBack.onlyHere}</span>}
      </span>
      <Button
        look="plain"
        label={say.ladder.undo(say.ladder.stamp[stamp.rung], time)}
        onPress={() => void undoStamp(known.id, stamp)}
      >
        {common.undo}
      </Button>
    </li>
  );
}
