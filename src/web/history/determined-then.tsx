import { useAsk } from '../ask/use-ask.js';
import { nameDuty } from '../decision/compare-determinations.js';
import type { DeterminationAnswer } from '../decision/service-answers.js';
import { Empty, ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { Sign } from '../look/sign.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as sayDecision } from '../words/decision.js';
import { wholeRecord as say } from '../words/history.js';
import type { KeptThenProps } from './kept-then.js';

/** What the law called for by then, on what was known by then: each duty with its outcome and its clock. */
export function DeterminedThen({ incident, query, timeZone }: KeptThenProps) {
  const path = `/api/incidents/${incident}/determination${query}`;
  const { data, error, again } = useAsk<DeterminationAnswer>(path, { keep: true });
  return (
    <Section title={say.determined}>
      {data === undefined && error === null && <Loading />}
      {error?.trouble === 'not-there' && (
        <Empty>
          <p>{say.notDetermined}</p>
        </Empty>
      )}
      {data === undefined && error !== null && error.trouble !== 'not-there' && (
        <ErrorState error={error} again={again} />
      )}
      {data !== undefined && (
        <>
          <p class="quiet">{`${sayDecision.history.made(data.version)}, ${tellInstant(data.madeAt, timeZone)}`}</p>
          <ul class="things">
            {data.determination.duties.map(({ id, outcome, dueAt }) => (
              <li key={id}>
                <strong>{nameDuty(id, null)}</strong>
                <p>
                  <Sign of={outcome} /> {sayDecision.outcomes[outcome]}
                  {outcome !== 'not-required' &&
                    `, ${dueAt === null ? sayDecision.history.noDeadline : say.due(tellInstant(dueAt, timeZone))}`}
                </p>
              </li>
            ))}
          </ul>
        </>
      )}
    </Section>
  );
}
