import { useAsk } from '../ask/use-ask.js';
import type { HoldsAnswer } from '../counsel/counsel-answers.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { counsel as sayCounsel } from '../words/counsel.js';
import { wholeRecord as say } from '../words/history.js';
import type { KeptThenProps } from './kept-then.js';

/** What had to be kept by then: each hold with its cause, since when, and counsel's release where there was one. */
export function HeldThen({ incident, query, timeZone }: KeptThenProps) {
  const path = `/api/incidents/${incident}/holds${query}`;
  const { data, error, again } = useAsk<HoldsAnswer>(path, { keep: true });
  const { holds } = sayCounsel;
  return (
    <Section title={holds.title}>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.holds.length === 0 && <p>{say.notHeld}</p>}
      <ul class="things">
        {data?.holds.map(({ id, cause, since, startedBy, reason, released }) => (
          <li key={id}>
            <strong>{holds.causes[cause]}</strong>
            <p>
              <Sign of={released === undefined ? 'yes' : 'no'} />{' '}
              {released === undefined
                ? holds.standing
                : holds.released(released.counsel, released.releasedOn)}
            </p>
            <p class="quiet">{holds.since(tellInstant(since, timeZone), startedBy)}</p>
            {reason !== undefined && <p>{reason}</p>}
          </li>
        ))}
      </ul>
    </Section>
  );
}
