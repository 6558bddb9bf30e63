import { useState } from 'preact/hooks';
import { Link, useLocation } from 'wouter-preact';
import { Button } from '../look/button.js';
import { Field } from '../look/field.js';
import { fieldMoment, momentOf } from '../look/moment.js';
import { wholeRecord as say } from '../words/history.js';

interface MomentFormProps {
  readonly incident: string;
  /** The moment that is shown (RFC 3339); null for now. */
  readonly at: string | null;
  readonly timeZone: string;
}

/** As of which moment the record is shown. */
export function MomentForm({ incident, at, timeZone }: MomentFormProps) {
  const [, go] = useLocation();
  const isTime = at !== null && !Number.isNaN(Date.parse(at));
  const [text, setText] = useState(isTime ? fieldMoment(at, timeZone) : '');
  const [looked, setLooked] = useState(false);
  const moment = text === '' ? null : momentOf(text, timeZone);
  const submit = (event: Event): void => {
    event.preventDefault();
    setLooked(true);
    if (moment !== null) go(`/incidents/${incident}/record?at=${encodeURIComponent(moment)}`);
  };
  return (
    <form class="form unprinted" onSubmit={submit} noValidate>
      <Field
        label={say.moment}
        hint={say.momentHint(timeZone)}
        type="datetime-local"
        value={text}
        onInput={setText}
        error={looked && moment === null ? say.notATime : null}
      />
      <Button type="submit">{say.show}</Button>
      {at !== null && (
        <p class="links-line">
          <Link href={`/incidents/${incident}/record`}>{say.showNow}</Link>
        </p>
      )}
    </form>
  );
}
