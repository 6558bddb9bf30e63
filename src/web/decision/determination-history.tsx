import { useState } from 'preact/hooks';
import { Link } from 'wouter-preact';
import { useAsk } from '../ask/use-ask.js';
import { Button } from '../look/button.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { decision as say } from '../words/decision.js';
import { nameDuty } from './compare-determinations.js';
import type { DeterminationLine, DeterminationsAnswer } from './service-answers.js';

const PAGE = 25;

/** Every determination, the latest first, with what changed from the one before. */
export function DeterminationHistory({ id, zone }: { id: string; zone: string }) {
  const [limit, setLimit] = useState(PAGE);
  const { data, error, again } = useAsk<DeterminationsAnswer>(
    `/api/incidents/${id}/determinations?limit=${limit}`,
  );
  return (
    <Section title={say.history.earlier}>
      {error !== null && <ErrorState error={error} again={again} />}
      {error === null && data === undefined && <Loading />}
      {data !== undefined && (
        <ol class="done">
          {data.items.map((line, index) => (
            <li key={line.sequence}>
              <p>
                <Link href={`/incidents/${id}/determinations/${line.sequence}`}>
                  {say.history.made(line.sequence)}
                </Link>
                {`, ${tellInstant(line.madeAt, zone)}`}
              </p>
              <Changes line={line} before={data.items[index + 1]} isLast={data.next === null} zone={zone} />
            </li>
          ))}
        </ol>
      )}
      {data !== undefined && data.next !== null && limit < 100 && (
        <Button onPress={() => setLimit(limit + PAGE)}>{say.history.more}</Button>
      )}
    </Section>
  );
}

interface ChangesProps {
  readonly line: DeterminationLine;
  readonly before: DeterminationLine | undefined;
  readonly isLast: boolean;
  readonly zone: string;
}

function Changes({ line, before, isLast, zone }: ChangesProps) {
  if (before === undefined) return isLast ? <p class="quiet">{say.history.first}</p> : null;
  const changes = changesOf(line, before, zone);
  if (changes.length === 0) return <p class="quiet">{say.history.same}</p>;
  return (
    <ul>
      {changes.map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  );
}

function changesOf(now: DeterminationLine, before: DeterminationLine, zone: string): string[] {
  const due = (at: string | null): string => (at === null ? say.history.noDeadline : tellInstant(at, zone));
  const came = now.duties.flatMap(({ id, outcome, dueAt }) => {
    const was = before.duties.find((duty) => duty.id === id);
    const name = nameDuty(id, null);
    if (was === undefined) return [say.history.appeared(name, say.outcomes[outcome])];
    return [
      ...(was.outcome === outcome
        ? []
        : [say.history.outcome(name, say.outcomes[was.outcome], say.outcomes[outcome])]),
      ...(was.dueAt === dueAt ? [] : [say.history.deadline(name, due(was.dueAt), due(dueAt))]),
    ];
  });
  const gone = before.duties.filter(({ id }) => now.duties.every((duty) => duty.id !== id));
  return [...came, ...gone.map(({ id }) => say.history.went(nameDuty(id, null)))];
}
