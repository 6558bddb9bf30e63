import { useState } from 'preact/hooks';
import { AskError } from './ask-error.js';
import { ask, type Asking } from './ask.js';
import { askAgain } from './use-ask.js';

export interface Telling {
  /**
   * Sends a change. Gives the answer, or undefined where it was refused: `error` then says why. What begins with one
   * of `touches` is asked for anew.
   */
  readonly tell: <Answer>(
    path: string,
    asking: Asking,
    touches?: readonly string[],
  ) => Promise<Answer | undefined>;
  /** The same for a change that is answered without a body; true once it is done. */
  readonly does: (path: string, asking: Asking, touches?: readonly string[]) => Promise<boolean>;
  readonly pending: boolean;
  readonly error: AskError | null;
  readonly forget: () => void;
}

/** A change that needs the service now. What must also work without signal goes through the outbox (`queueRequest`). */
export function useTell(): Telling {
  const [pending, setPending] = useState(false);
  const [error, setError] = useState<AskError | null>(null);
  const attempt = async <Answer>(
    path: string,
    asking: Asking,
    touches: readonly string[] = [],
  ): Promise<{ answer: Answer } | undefined> => {
    setPending(true);
    setError(null);
    try {
      const answer = await ask<Answer>(path, asking);
      await Promise.all(touches.map(askAgain));
      return { answer };
    } catch (caught) {
      if (!(caught instanceof AskError)) throw caught;
      setError(caught);
      return undefined;
    } finally {
      setPending(false);
    }
  };
  return {
    pending,
    error,
    forget: () => setError(null),
    tell: async <Answer>(path: string, asking: Asking, touches?: readonly string[]) =>
      (await attempt<Answer>(path, asking, touches))?.answer,
    does: async (path, asking, touches) => (await attempt(path, asking, touches)) !== undefined,
  };
}
