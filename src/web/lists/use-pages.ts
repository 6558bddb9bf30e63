import { useState } from 'preact/hooks';
import { ask } from '../ask/ask.js';
import { type AskOptions, type Asked, useAskWith } from '../ask/use-ask.js';

interface Part<Item> {
  readonly items: readonly Item[];
  readonly next: string | null;
}

export interface Pages<Item> extends Asked<Part<Item>> {
  /** Fetches the next page as well; undefined where there is none. */
  readonly more: (() => void) | undefined;
}

/** A long list, the newest first, a page at a time. */
export function usePages<Item>(path: string | null, options: AskOptions = {}): Pages<Item> {
  const [count, setCount] = useState(1);
  const asked = useAskWith(path === null ? null : `${path}#${count}`, options, (address, signal) =>
    askPages<Item>(address, signal),
  );
  const more = (asked.data?.next ?? null) === null ? undefined : () => setCount(count + 1);
  return { ...asked, more };
}

/** @param address path and how many pages, as `/api/mail#2`: what it is kept under as well */
async function askPages<Item>(address: string, signal: AbortSignal): Promise<Part<Item>> {
  const [path = '', count = '1'] = address.split('#');
  let part: Part<Item> = { items: [], next: '' };
  for (let page = 0; page < Number(count) && part.next !== null; page += 1) {
    const after: string = part.next === '' ? '' : `&after=${part.next}`;
    const next = await ask<Part<Item>>(`${path}${path.includes('?') ? '&' : '?'}limit=25${after}`, {
      signal,
    });
    part = { items: [...part.items, ...next.items], next: next.next };
  }
  return part;
}
