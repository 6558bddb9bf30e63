import type { ClosingWarning } from '../../../shared/follow-up/warn-on-closing.js';
import { useAsk } from '../ask/use-ask.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { followUp as say } from '../words/follow-up.js';
import type { ClosingAnswer } from './service-answers.js';
import { StatusForm } from './status-form.js';

interface ClosingProps {
  readonly incident: string;
  readonly status: 'open' | 'closed';
  /** The version of the incident that is closed. */
  readonly version: number;
  readonly manages: boolean;
}

/** What is still in the way of closing, and for a manager the closing itself. The service only warns. */
export function ClosingSection({ incident, status, version, manages }: ClosingProps) {
  const { data, error, again } = useAsk<ClosingAnswer>(`/api/incidents/${incident}/closing`, { keep: true });
  if (data === undefined) return error === null ? <Loading /> : <ErrorState error={error} again={again} />;
  const unfinished = data.items.length;
  return (
    <Section title={status === 'open' ? say.closing.title : say.closing.reopenTitle}>
      {unfinished === 0 ? <p>{say.closing.nothing}</p> : <Against warnings={data.items} />}
      {manages ? (
        <StatusForm
          key={`${status} ${version}`}
          incident={incident}
          status={status}
          version={version}
          unfinished={unfinished}
        />
      ) : (
        <p>{say.closing.managers}</p>
      )}
    </Section>
  );
}

function Against({ warnings }: { warnings: readonly ClosingWarning[] }) {
  const kinds = [...new Set(warnings.map(({ kind }) => kind))];
  return (
    <div class="speaks-against">
      <h3>{say.closing.against(warnings.length)}</h3>
      {kinds.map((kind) => {
        const own = warnings.filter((warning) => warning.kind === kind);
        return (
          <details key={kind} open={kind.startsWith('duty')}>
            <summary>
              {own.length} · {say.closing.kinds[kind]}
            </summary>
            <ul class="against" lang="en">
              {own.map(({ text }) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          </details>
        );
      })}
      <p>{say.closing.warning}</p>
    </div>
  );
}
