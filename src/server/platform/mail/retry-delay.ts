const FIRST_MS = 30_000;
const LONGEST_MS = 60 * 60_000;

/**
 * How long to wait after a try that did not go through: twice as long each time, up to an hour, of which the second half
 * is left to chance, so that what failed together does not come back together.
 * @param tries how many there have been
 * @param chance from 0 to below 1
 * @example retryDelayMs(1, 0.5) // 22500
 * @example retryDelayMs(20, 0) // 1800000
 */
export function retryDelayMs(tries: number, chance: number): number {
  const longest = Math.min(LONGEST_MS, FIRST_MS * 2 ** (tries - 1));
  return Math.round(longest / 2 + (longest / 2) * chance);
}

/** With these delays a mail is tried for about a day: what it calls for is known from the list of tasks by then. */
export const MOST_TRIES = 30;
