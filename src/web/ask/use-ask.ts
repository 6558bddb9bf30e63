import { useQuery } from '@tanstack/preact-query';
import { keepAnswer, keptAnswer } from '../device/kept-answers.js';
import { AskError } from './ask-error.js';
import { ask } from './ask.js';
import { queryClient } from './query-client.js';

export interface AskOptions {
  /** Keep the answer on this device, sealed, and show it when there is no signal. */
  readonly keep?: boolean;
  /** Ask anew after so many milliseconds while the page is looked at. */
  readonly everyMs?: number;
}

export interface Asked<Answer> {
  /** Undefined while it loads, and where it failed and nothing was kept. */
  readonly data: Answer | undefined;
  readonly error: AskError | null;
  readonly loading: boolean;
  /** When the answer was kept, where it comes from this device since there is no signal; otherwise null. */
  readonly keptAt: string | null;
  readonly again: () => void;
}

interface Got<Answer> {
  readonly answer: Answer;
  readonly keptAt: string | null;
}

/**
 * What the service says at an address; null asks nothing.
 * @example const { data, error, loading, again } = useAsk<RosterAnswer>('/api/roster?from=2026-06-13&to=2026-06-13')
 */
export function useAsk<Answer>(path: string | null, options: AskOptions = {}): Asked<Answer> {
  return useAskWith(path, options, (address, signal) => ask<Answer>(address, { signal }));
}

/** The same with another way to fetch, such as page after page. */
export function useAskWith<Answer>(
  path: string | null,
  { keep = false, everyMs }: AskOptions,
  fetchIt: (path: string, signal: AbortSignal) => Promise<Answer>,
): Asked<Answer> {
  const query = useQuery<Got<Answer>, AskError>({
    queryKey: [path],
    enabled: path !== null,
    queryFn: ({ signal }) => get(path ?? '', keep, () => fetchIt(path ?? '', signal)),
    ...(everyMs !== undefined && { refetchInterval: everyMs }),
  });
  return {
    data: query.data?.answer,
    error: query.error,
    loading: path !== null && query.isPending,
    keptAt: query.data?.keptAt ?? null,
    again: () => void query.refetch(),
  };
}

async function get<Answer>(
  path: string,
  keep: boolean,
  fetchIt: () => Promise<Answer>,
): Promise<Got<Answer>> {
  try {
    const answer = await fetchIt();
    if (keep) await keepAnswer(path, answer);
    return { answer, keptAt: null };
  } catch (error) {
    const kept = error instanceof AskError && error.trouble === 'unreachable' && keep;
    const found = kept ? await keptAnswer<Answer>(path) : undefined;
    if (found === undefined) throw error;
    return found;
  }
}

/** Asks anew for everything whose address begins so: after a change, `askAgain('/api/incidents')`. */
export function askAgain(prefix: string): Promise<void> {
  return queryClient.invalidateQueries({
    predicate: ({ queryKey: [path] }) => typeof path === 'string' && path.startsWith(prefix),
  });
}
