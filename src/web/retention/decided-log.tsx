import type { RetentionDecision } from '../../../shared/retention/retention-line.js';
import { tellDay } from '../lists/tell-day.js';
import { usePages } from '../lists/use-pages.js';
import { Button } from '../look/button.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { lists } from '../words/lists.js';
import { retention } from '../words/en/retention.js';
import { type Kind, nameOf, tellHolds } from './retention-answer.js';

const say = retention.decided;

/** What people decided, the latest first. */
export function DecidedLog({ kinds }: { kinds: readonly Kind[] }) {
  const { data, error, again, more } = usePages<RetentionDecision>('/api/retention/decisions');
  return (
    <Section title={say.title}>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.items.length === 0 && <p class="quiet">{say.empty}</p>}
      <ol class="log">
        {data?.items.map((made) => (
          <li key={made.id}>
            <p>
              <strong>{say[made.decision]}</strong> {nameOf(made, kinds)}
              {made.keepUntil !== null && `, ${say.through(tellDay(made.keepUntil))}`}
            </p>
            <p>{made.reason}</p>
            <p class="quiet">
              {[say.by(made.person, tellInstant(made.at)), tellHolds(made.gone)].filter(Boolean).join('. ')}
              {made.counsel !== null && `. ${say.counsel(made.counsel, tellDay(made.directedOn ?? ''))}`}
            </p>
          </li>
        ))}
      </ol>
      {more !== undefined && <Button onPress={more}>{lists.more}</Button>}
    </Section>
  );
}
