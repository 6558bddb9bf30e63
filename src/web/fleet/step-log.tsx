import { Button } from '../look/button.js';
import { Empty, ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { usePages } from '../lists/use-pages.js';
import { fleet as say } from '../words/fleet.js';
import { lists } from '../words/lists.js';
import { type LoggedStep, whoOf } from './craft-answers.js';
import { tellStep } from './tell-step.js';

const LATE_MS = 60_000;

/** Everything that was done about the service of a craft, the newest first. */
export function StepLog({ path }: { path: string }) {
  const { data, error, again, more } = usePages<LoggedStep>(`${path}/service-steps`, { keep: true });
  return (
    <Section title={say.log.title}>
      {data === undefined && (error === null ? <Loading /> : <ErrorState error={error} again={again} />)}
      {data?.items.length === 0 && <Empty>{say.log.empty}</Empty>}
      <ol class="log">
        {data?.items.map((logged) => (
          <li key={logged.id}>
            <strong>{say.log.kinds[logged.step.kind]}</strong>
            {tellStep(logged.step) !== '' && <span>{tellStep(logged.step)}</span>}
            <span class="quiet">
              {say.log.entered(tellInstant(logged.at), whoOf(logged))}
              {isLate(logged) && `, ${say.log.late(tellInstant(logged.recordedAt))}`}
            </span>
          </li>
        ))}
      </ol>
      {more !== undefined && <Button onPress={more}>{lists.more}</Button>}
    </Section>
  );
}

const isLate = ({ at, recordedAt }: LoggedStep): boolean => Date.parse(recordedAt) - Date.parse(at) > LATE_MS;
