import { useState } from 'preact/hooks';
import { NOT_BACK_ENDS, type NotBackEnd } from '../../../shared/outing/not-back.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Choice } from '../look/choice.js';
import { Field } from '../look/field.js';
import { momentOf } from '../look/moment.js';
import { ErrorState } from '../look/notes.js';
import { notBack as say } from '../words/not-back.js';
import type { NotBackView } from './not-back-answers.js';
import { notBackPath } from './not-back-queue.js';

/** How it ended: somebody's word, with a time. */
export function EndingForm({ view: { id, timeZone } }: { view: NotBackView }) {
  const [ended, setEnded] = useState<NotBackEnd | undefined>();
  const [how, setHow] = useState('');
  const [at, setAt] = useState('');
  const [looked, setLooked] = useState(false);
  const [key] = useState(() => crypto.randomUUID());
  const { tell, pending, error } = useTell();
  const when = at === '' ? undefined : momentOf(at, timeZone);
  const end = async (event: Event): Promise<void> => {
    event.preventDefault();
    setLooked(true);
    if (ended === undefined || when === null || pending) return;
    const body = {
      ended,
      ...(when !== undefined && { at: when }),
      ...(how.trim() !== '' && { how: how.trim() }),
    };
    const path = notBackPath(id);
    await tell(`${path}/ending`, { method: 'POST', body, key }, [path, '/api/outings']);
  };
  return (
    <form class="form unprinted" onSubmit={(event) => void end(event)} noValidate>
      <p class="quiet">{say.ending.lead}</p>
      <Choice
        legend={say.ending.legend}
        options={NOT_BACK_ENDS.map((value) => ({ value, label: say.ending.kinds[value] }))}
        value={ended}
        onChoose={setEnded}
        error={looked && ended === undefined ? say.ending.missing : null}
      />
      <Field label={say.ending.how} value={how} onInput={setHow} error={error?.faultAt('/how')} />
      <Field
        label={say.ending.at}
        hint={say.ending.atHint}
        type="datetime-local"
        value={at}
        onInput={setAt}
        error={when === null ? say.ending.moment : error?.faultAt('/at')}
      />
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {say.ending.end}
      </Button>
    </form>
  );
}
