import { type AskOptions, type Asked, useAskWith } from './use-ask.js';
import { ask } from './ask.js';

interface Part<Item> {
  readonly items: readonly Item[];
  readonly next: string | null;
}

/**
 * Every item of a list that the service gives in pages: for lists that a person can look over, such as the fleet.
 * @example const { data: craft } = useAskAll<Craft>('/api/craft', { keep: true })
 */
export function useAskAll<Item>(path: string | null, options: AskOptions = {}): Asked<readonly Item[]> {
  return useAskWith(path, options, askAll<Item>);
}

async function askAll<Item>(path: string, signal: AbortSignal): Promise<readonly Item[]> {
  const items: Item[] = [];
  let after = '';
  do {
    const query = `${path.includes('?') ? '&' : '?'}limit=100${after}`;
    const part = await ask<Part<Item>>(`${path}${query}`, { signal });
    items.push(...part.items);
    after = part.next === null ? '' : `&after=${part.next}`;
  } while (after !== '');
  return items;
}
