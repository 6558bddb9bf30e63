import { BASIS_SENTENCES } from '../../../shared/determination/duty-words.js';
import { useAsk } from '../ask/use-ask.js';
import { Deadline } from '../look/deadline.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { followUp as say } from '../words/follow-up.js';
import type { ClaimsClocksAnswer } from './service-answers.js';

/** The periods of law about claims as they run, each with its source and what is doubtful about it. */
export function ClaimsClocks({ incident, zone }: { incident: string; zone: string }) {
  const now = useNow();
  const { data, error, again } = useAsk<ClaimsClocksAnswer>(`/api/incidents/${incident}/claims-clocks`, {
    keep: true,
  });
  return (
    <Section title={say.claims.title}>
      <p class="quiet">{say.claims.lead}</p>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.items.map(({ id, name, citation, from, what, doubts, basis, readOn, startsAt, endsAt }) => (
        <article class="claims-clock" key={id} aria-label={name}>
          <h3 lang="en">{name}</h3>
          {endsAt === null ? (
            <p>{from === 'first-written-claim' ? say.claims.notStarted : say.claims.notStartedOccurrence}</p>
          ) : (
            <Deadline at={endsAt} timeZone={zone} />
          )}
          {startsAt !== null && <p>{say.claims.started(tellInstant(startsAt, zone, now))}</p>}
          <p lang="en">
            {what} <cite>{citation}</cite>
          </p>
          <p class="quiet">{say.claims.read(basis === 'superseded' ? '' : BASIS_SENTENCES[basis], readOn)}</p>
          <details>
            <summary>{say.claims.doubts}</summary>
            <ul lang="en">
              {doubts.map((doubt) => (
                <li key={doubt}>{doubt}</li>
              ))}
            </ul>
          </details>
        </article>
      ))}
    </Section>
  );
}
