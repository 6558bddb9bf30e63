import { useAsk } from '../ask/use-ask.js';
import { Fold } from '../look/fold.js';
import { ErrorState, Loading } from '../look/notes.js';
import { tellInstant } from '../look/tell-instant.js';
import { requests as say } from '../words/requests.js';
import type { VersionsAnswer } from './request-answers.js';

/** Everything that was entered about a request, the newest first. */
export function VersionsPart({ id }: { id: string }) {
  return <Fold title={say.page.versions}>{() => <Versions id={id} />}</Fold>;
}

function Versions({ id }: { id: string }) {
  const { data, error, again } = useAsk<VersionsAnswer>(`/api/requests/${id}/versions`);
  if (data === undefined) return error === null ? <Loading /> : <ErrorState error={error} again={again} />;
  return (
    <ul class="request-entries">
      {data.items.map(({ version, what, reason, person, at }) => (
        <li class="request-entry" key={version}>
          <p>
            <strong>{`${tellInstant(at)}, ${person}: ${say.page.whats[what] ?? what}`}</strong>
          </p>
          {reason !== null && <p>{reason}</p>}
        </li>
      ))}
    </ul>
  );
}
