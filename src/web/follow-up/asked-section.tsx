import { telOf } from '../../../shared/follow-up/build-call-list.js';
import { useAsk } from '../ask/use-ask.js';
import { Button } from '../look/button.js';
import { Fold } from '../look/fold.js';
import { ErrorState } from '../look/notes.js';
import { Section } from '../look/section.js';
import { tellInstant } from '../look/tell-instant.js';
import { useNow } from '../look/use-now.js';
import { followUp as say } from '../words/follow-up.js';
import type { EscalationAnswer, Listed } from './service-answers.js';
import type { TaskDone } from './task-props.js';
import { useStep } from './use-step.js';

const EVERY_MINUTE = 60_000;

interface AskedProps {
  readonly zone: string;
  readonly onDone: (done: TaskDone) => void;
  /** How many stand there at once; the others behind a fold, so that the rest of the page stays in reach. */
  readonly most?: number;
  /** Only those of one incident. */
  readonly incident?: string;
}

/** Urgent tasks that nobody has acknowledged, who was asked, and the button that ends the asking. */
export function AskedSection({ zone, onDone, incident, most = 3 }: AskedProps) {
  const { data } = useAsk<Listed<EscalationAnswer>>('/api/escalations', {
    keep: true,
    everyMs: EVERY_MINUTE,
  });
  const items = (data?.items ?? []).filter(
    ({ task }) => incident === undefined || task.incident === incident,
  );
  if (items.length === 0) return null;
  return (
    <Section title={say.asked.title}>
      <p class="quiet">{say.asked.lead}</p>
      <AskedList items={items.slice(0, most)} zone={zone} onDone={onDone} />
      {items.length > most && (
        <Fold title={say.asked.more(items.length - most)}>
          {() => <AskedList items={items.slice(most)} zone={zone} onDone={onDone} />}
        </Fold>
      )}
    </Section>
  );
}

function AskedList({ items, ...rest }: AskedProps & { items: readonly EscalationAnswer[] }) {
  return (
    <ul class="asked-for">
      {items.map((one) => (
        <Asked key={one.task.id} one={one} {...rest} />
      ))}
    </ul>
  );
}

function Asked({ one: { task, reference, asked }, zone, onDone }: AskedProps & { one: EscalationAnswer }) {
  const now = useNow();
  // Whoever was asked last has it to answer now.
  const last = asked.at(-1);
  const { take, pending, error } = useStep();
  const have = async (): Promise<void> => {
    const about = `${reference}: ${task.title}`;
    const answer = await take(task, { what: 'acknowledgement', about });
    if (answer !== undefined)
      onDone({ words: answer === 'kept' ? say.kept : `${say.acts.have}: ${task.title}` });
  };
  return (
    <li>
      <p>
        <strong lang="en">{task.title}</strong>{' '}
        <span class="quiet">
          {reference} ·{' '}
          {last === undefined ? (
            say.asked.nobody
          ) : (
            <>
              {say.asked.by(last.name, tellInstant(last.at, zone, now))}
              {asked.length > 1 && `, ${say.asked.before(asked.length - 1)}`}
            </>
          )}
        </span>
      </p>
      {error !== null && <ErrorState error={error} />}
      <div class="buttons">
        <Button
          look="act"
          busy={pending}
          onPress={() => void have()}
          label={`${say.acts.have}: ${task.title}`}
        >
          {say.acts.have}
        </Button>
        {last !== undefined && last.phone !== null && (
          <a class="button" href={telOf(last.phone)}>
            {say.asked.call(last.name)}
          </a>
        )}
      </div>
    </li>
  );
}
