import { readFile } from 'node:fs/promises';
import { expect } from 'vitest';
import type { Browser } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';

/** The path of the link in the latest mail to somebody, as they read it. */
export async function linkMailed(administrator: Browser, address: string): Promise<string> {
  const latest = async (): Promise<string> => {
    const { items } = bodyOf<{ items: { to: string; words: string | null }[] }>(
      await administrator.get('/api/mail?limit=20'),
    );
    const words = items.find(({ to }) => to === address)?.words ?? '';
    return /^Written to (.+)$/.exec(words)?.[1] ?? '';
  };
  await expect.poll(latest).not.toBe('');
  const mail = (await readFile(await latest(), 'utf8')).replaceAll('=\r\n', '');
  return new URL(/https:\S+\/collect\/[\w-]{43}/.exec(mail)?.[0] ?? '').pathname;
}
