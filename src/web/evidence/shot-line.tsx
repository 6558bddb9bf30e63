import { useState } from 'preact/hooks';
import { fieldWords } from '../../../shared/record/field-words/tell-field.js';
import type { ShotState } from '../../../shared/record/shots.js';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { Fold } from '../look/fold.js';
import { Sign } from '../look/sign.js';
import { TakePhotographs } from '../look/take-photographs.js';
import { evidence as say } from '../words/evidence.js';
import { language } from '../words/speak.js';

interface ShotLineProps {
  readonly state: ShotState;
  /** The craft, for those who hear one button after another. */
  readonly of: string;
  /** Absent for whoever reads and does not write. */
  readonly take: ((file: File) => Promise<void>) | undefined;
  /** Absent where there is nothing to say it of. */
  readonly cannot?: ((reason: string) => Promise<void>) | undefined;
}

const SIGN = { done: 'yes', open: 'no', cannot: 'not-applicable' } as const;

/** One picture of the list: whether it is there, the camera, and the reason where it cannot be taken. */
export function ShotLine({ state: { shot, state, files, reason }, of, take, cannot }: ShotLineProps) {
  const name = fieldWords(language()).values.shot[shot];
  return (
    <li class="shot">
      <div class="shot-what">
        <h3>{name}</h3>
        <p>
          <Sign of={SIGN[state]} />
          {say.shots.state[state]}
          {state === 'done' && `, ${say.shots.pictures(files.length)}`}
          {state === 'cannot' && reason !== null && `: ${reason}`}
        </p>
      </div>
      {take !== undefined && (
        <TakePhotographs
          label={state === 'done' ? say.shots.again : say.shots.take}
          of={`${name}, ${of}`}
          keep={take}
        />
      )}
      {cannot !== undefined && state !== 'done' && (
        <Fold title={say.shots.cannot}>{() => <CannotForm of={`${name}, ${of}`} cannot={cannot} />}</Fold>
      )}
    </li>
  );
}

function CannotForm({ of, cannot }: { of: string; cannot: (reason: string) => Promise<void> }) {
  const [reason, setReason] = useState('');
  const [looked, setLooked] = useState(false);
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (reason.trim() === '') return;
    await cannot(reason.trim());
    setReason('');
    setLooked(false);
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Field
        label={say.shots.reason(of)}
        hint={say.shots.reasonHint}
        value={reason}
        onInput={setReason}
        error={looked && reason.trim() === '' ? say.shots.lacksReason : null}
      />
      <Button type="submit">{say.shots.keepReason}</Button>
    </form>
  );
}
