import { QueryClient } from '@tanstack/preact-query';
import { AskError } from './ask-error.js';

const FRESH_MS = 15_000;
const MOST_TRIES = 2;

/**
 * What was asked lately. A refusal is not asked again; only what may be a passing fault is. Without signal it asks all
 * the same, as "online" of a browser means little at the water, and what is kept on the device steps in.
 */
export const queryClient = new QueryClient({
  defaultOptions: {
    queries: {
      staleTime: FRESH_MS,
      networkMode: 'always',
      retry: (failures, error) =>
        failures < MOST_TRIES &&
        error instanceof AskError &&
        (error.trouble === 'broken' || error.trouble === 'busy'),
    },
    mutations: { networkMode: 'always' },
  },
});
