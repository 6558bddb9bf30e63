import { useState } from 'preact/hooks';
import { useAskAll } from '../ask/use-ask-all.js';
import { Button } from '../look/button.js';
import { ErrorState, Loading } from '../look/notes.js';
import { Select } from '../look/select.js';
import { followUp as say } from '../words/follow-up.js';
import type { AccountAnswer } from './service-answers.js';
import type { TaskItemProps } from './task-props.js';
import { useStep } from './use-step.js';

/** A manager gives a task to anybody who works here, or takes it from them. */
export function GiveForm({ task, onDone }: TaskItemProps) {
  const [to, setTo] = useState(task.assignee ?? '');
  const accounts = useAskAll<AccountAnswer>('/api/accounts');
  const { take, pending, error } = useStep();
  if (accounts.data === undefined)
    return accounts.error === null ? (
      <Loading />
    ) : (
      <ErrorState error={accounts.error} again={accounts.again} />
    );
  const people = accounts.data.filter(({ active, role }) => active && role !== 'counsel');
  const submit = async (event: Event): Promise<void> => {
    event.preventDefault();
    if (pending) return;
    const body = to === '' ? {} : { accountId: to };
    const answer = await take(task, { what: 'assignee', body, on: 'version' });
    if (answer === undefined) return;
    const name = people.find(({ id }) => id === to)?.name;
    onDone({ words: name === undefined ? say.task.nobody(say.owners[task.owner]) : say.task.has(name) });
  };
  return (
    <form class="form" onSubmit={(event) => void submit(event)} noValidate>
      <Select
        label={say.acts.giveTo}
        value={to}
        onChoose={setTo}
        optional
        none={say.acts.nobody}
        groups={[{ options: people.map(({ id, name }) => ({ value: id, label: name })) }]}
      />
      {error !== null && <ErrorState error={error} />}
      <Button type="submit" look="main" busy={pending}>
        {say.acts.keep}
      </Button>
    </form>
  );
}
