import { useState } from 'preact/hooks';
import { AskError } from '../ask/ask-error.js';
import { ask } from '../ask/ask.js';
import { askAgain } from '../ask/use-ask.js';
import { queueRequest } from '../device/outbox.js';
import type { TaskAnswer } from './service-answers.js';

/** A step of a task and what it takes. */
interface Step {
  readonly what: 'completion' | 'undoing' | 'assignee' | 'acknowledgement' | 'reached';
  readonly body?: object;
  /** Whether the step is made on the version that was read, or under a key of its own. */
  readonly on?: 'version' | 'key';
  /** Words by which it is known while it is only on this device; without them it needs the service now. */
  readonly about?: string;
}

export interface Stepping {
  /** Gives the task as it then stands, `kept` where it waits on this device, undefined where it was refused. */
  readonly take: (
    task: Pick<TaskAnswer, 'id' | 'incident' | 'version'>,
    step: Step,
  ) => Promise<TaskAnswer | 'kept' | undefined>;
  readonly pending: boolean;
  readonly error: AskError | null;
}

export const taskPath = ({ incident, id }: Pick<TaskAnswer, 'id' | 'incident'>): string =>
  `/api/incidents/${incident}/tasks/${id}`;

/** Takes a step with a task; where there is no signal it waits on this device, if the step may. */
export function useStep(): Stepping {
  const [pending, setPending] = useState(false);
  const [error, setError] = useState<AskError | null>(null);
  const [key, setKey] = useState(() => crypto.randomUUID());
  return {
    pending,
    error,
    take: async (task, { what, body, on, about }) => {
      setPending(true);
      setError(null);
      const asking = {
        method: what === 'assignee' ? ('PUT' as const) : ('POST' as const),
        body: body ?? {},
        ...(on === 'version' && { version: task.version }),
        ...(on === 'key' && { key }),
      };
      const path = `${taskPath(task)}/${what}`;
      try {
        const answer = await ask<TaskAnswer>(path, asking);
        setKey(crypto.randomUUID());
        await askForWork();
        return answer;
      } catch (caught) {
        if (!(caught instanceof AskError)) throw caught;
        if (caught.trouble === 'unreachable' && about !== undefined) {
          await queueRequest({ ...asking, path, line: task.incident, about });
          setKey(crypto.randomUUID());
          return 'kept';
        }
        setError(caught);
        // What was refused may rest on what is no longer so.
        if (caught.trouble === 'changed-meanwhile' || caught.trouble === 'refused') await askForWork();
        return undefined;
      } finally {
        setPending(false);
      }
    },
  };
}

/** Everything that shows the work, asked for anew. */
export async function askForWork(): Promise<void> {
  await Promise.all(['/api/tasks', '/api/escalations', '/api/incidents', '/api/clocks'].map(askAgain));
}
