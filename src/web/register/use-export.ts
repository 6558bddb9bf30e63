import { useEffect, useState } from 'preact/hooks';
import { AskError } from '../ask/ask-error.js';
import { ask } from '../ask/ask.js';
import type { ExportAnswer } from './register-answers.js';

const LOOK_MS = 700;
const BASE = '/api/register-exports';

export interface Exporting {
  readonly job: ExportAnswer | null;
  readonly error: AskError | null;
  /** From the press until the file is there or has failed. */
  readonly busy: boolean;
  readonly start: (asked: object) => Promise<void>;
  readonly forget: () => void;
  /** Where the file is fetched. */
  readonly file: string | null;
}

/** A file of the register that the service writes, followed until it is ready. */
export function useExport(): Exporting {
  const [job, setJob] = useState<ExportAnswer | null>(null);
  const [error, setError] = useState<AskError | null>(null);
  const [starting, setStarting] = useState(false);
  const attempt = async (work: () => Promise<ExportAnswer>): Promise<void> => {
    try {
      setJob(await work());
    } catch (caught) {
      if (!(caught instanceof AskError)) throw caught;
      setError(caught);
    }
  };
  useEffect(() => {
    if (job?.state !== 'running' || error !== null) return;
    const looking = setTimeout(() => void attempt(() => ask(`${BASE}/${job.id}`)), LOOK_MS);
    return () => clearTimeout(looking);
  }, [job, error]);
  return {
    job,
    error,
    busy: starting || (job?.state === 'running' && error === null),
    start: async (asked) => {
      setError(null);
      setJob(null);
      setStarting(true);
      await attempt(() => ask(BASE, { method: 'POST', body: asked, key: crypto.randomUUID() }));
      setStarting(false);
    },
    forget: () => {
      setJob(null);
      setError(null);
    },
    file: job?.state === 'ready' ? `${BASE}/${job.id}/file` : null,
  };
}
