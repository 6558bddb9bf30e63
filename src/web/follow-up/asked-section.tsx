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
import type { TaskDone } from './task-item.js';
import { useStep } from './use-step.js';

const EVERY_MINUTE = 60_000;
/** The others stand behind a fold, so that the list of the work stays in reach. */
const SHOWN = 3;

interface AskedProps {
  readonly zone: string;
  readonly onDone: (done: TaskDone) => void;
  /** Only those of one incident. */
  readonly incident?: string;
}

/** Urgent tasks that nobody has acknowledged, who was asked, and the button that ends the asking. */
export function AskedSection({ zone, onDone, incident }: AskedProps) {
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
      <AskedList items={items.slice(0, SHOWN)} zone={zone} onDone={onDone} />
      {items.length > SHOWN && (
        <Fold title={say.asked.more(items.length - SHOWN)}>
          {() => <AskedList items={items.slice(SHOWN)} zone={zone} onDone={onDone} />}
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
          {asked.length === 0
            ? say.asked.nobody
            : asked.map(({ name, at }) => say.asked.by(name, tellInstant(at, zone, now))).join(', ')}
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
        {asked.map(
          ({ accountId, name, phone }) =>
            phone !== null && (
              <a class="button" key={accountId} href={telOf(phone)}>
                {say.asked.call(name)}
              </a>
            ),
        )}
      </div>
    </li>
  );
}
