import { useAsk } from '../ask/use-ask.js';
import { useTell } from '../ask/use-tell.js';
import { Button } from '../look/button.js';
import { Empty, ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { counsel as say } from '../words/counsel.js';
import type { AccountLine, Assignment } from './counsel-answers.js';
import { WordsForm } from './words-form.js';

interface AssignedPartProps {
  readonly incident: string;
  /** Accounts of lawyers; undefined for whoever assigns nobody. */
  readonly lawyers: readonly AccountLine[] | undefined;
}

/** Which lawyers read the incident, and did. */
export function AssignedPart({ incident, lawyers }: AssignedPartProps) {
  const path = `/api/incidents/${incident}/counsel`;
  const { data, error, again } = useAsk<{ items: readonly Assignment[] }>(path);
  const telling = useTell();
  const reading = new Set(
    (data?.items ?? []).filter((one) => one.endedAt === undefined).map((one) => one.account),
  );
  return (
    <Section title={say.assigned.title}>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.items.length === 0 && <Empty>{say.assigned.none}</Empty>}
      <ul class="counsel-people">
        {data?.items.map(({ id, account, name, assignedAt, assignedBy, endedAt }) => (
          <li key={id}>
            <span>
              {name},{' '}
              {endedAt === undefined
                ? say.assigned.since(tellInstant(assignedAt), assignedBy)
                : say.assigned.ended(tellInstant(endedAt))}
            </span>
            {endedAt === undefined && lawyers !== undefined && (
              <Button onPress={() => void telling.does(`${path}/${account}`, { method: 'DELETE' }, [path])}>
                {say.assigned.end(name)}
              </Button>
            )}
          </li>
        ))}
      </ul>
      {lawyers?.length === 0 && <p class="quiet">{say.assigned.noAccounts}</p>}
      {lawyers !== undefined && lawyers.length > 0 && (
        <WordsForm
          fields={[
            {
              name: 'account',
              label: say.assigned.whom,
              none: say.assigned.choose,
              options: lawyers
                .filter(({ id }) => !reading.has(id))
                .map(({ id, name }) => ({ value: id, label: name })),
            },
          ]}
          button={say.assigned.assign}
          send={(body) => telling.does(path, { method: 'POST', body }, [path])}
          pending={telling.pending}
          error={telling.error}
        />
      )}
    </Section>
  );
}
