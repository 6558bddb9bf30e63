import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import { useLocation } from 'wouter-preact';
import { AskError } from '../ask/ask-error.js';
import { ErrorState, Note } from '../look/notes.js';
import { common } from '../words/common.js';
import { beginNotBack } from './not-back-queue.js';
import { markBack } from './outing-queue.js';

interface Marking {
  readonly markBack: (unit: string) => void;
  /** Begins search sheet and ladder, and leads there. */
  readonly openNotBack: (unit: string) => void;
  /** Why the latest press came to nothing. */
  readonly failure: ComponentChildren;
}

/** The presses of the list. */
export function useMarking(): Marking {
  const [, go] = useLocation();
  const [failure, setFailure] = useState<ComponentChildren>(null);
  const doing = (work: () => Promise<void>): void => {
    setFailure(null);
    work().catch((error: unknown) => {
      console.warn('A press could not be kept.', error);
      const refused = error instanceof AskError;
      setFailure(refused ? <ErrorState error={error} /> : <Note kind="error">{common.sending.notKept}</Note>);
    });
  };
  return {
    markBack: (unit) => doing(() => markBack(unit)),
    openNotBack: (unit) => doing(async () => go(`/out-and-back/not-back/${await beginNotBack(unit)}`)),
    failure,
  };
}
