import type { BrowserContext, Page } from 'playwright-core';
import { type PhoneDesk, slowPage } from './phone-desk.js';

const WORDS = 'The boat came round the point and nobody saw the other one until it was beside them. ';
/** Quick, for one thumb. */
const BETWEEN_KEYS_MS = 60;

export interface TypingOnPhone {
  readonly reference: string;
  /** Characters of the whole record as JSON. */
  readonly characters: number;
  /** From each key until the next picture, the worst of all: milliseconds, in steps of 8. */
  readonly worst: number;
}

/** How far typing lags behind the fingers in the account of the longest record of the demonstration. */
export async function typingOnPhone(desk: PhoneDesk, signInName: string): Promise<TypingOnPhone> {
  const context = await desk.signedIn(signInName);
  const { id, reference, characters } = await longestRecord(context, desk.url);
  const { page } = await slowPage(context);
  await page.goto(`${desk.url}/incidents/${id}/record/account`);
  const field = page.locator('main textarea').first();
  await field.waitFor();
  await watchKeys(page);
  await field.focus();
  await page.keyboard.type(WORDS, { delay: BETWEEN_KEYS_MS });
  const worst = await page.evaluate<number>('globalThis.worstKey');
  await context.close();
  return { reference, characters, worst };
}

/** The browser's own measure of each key until the next picture (Event Timing); below 16 ms it tells none. */
async function watchKeys(page: Page): Promise<void> {
  await page.evaluate(`
    globalThis.worstKey = 0;
    new PerformanceObserver((list) => {
      for (const { name, duration } of list.getEntries()) {
        if (name.startsWith('key') || name === 'input') globalThis.worstKey = Math.max(globalThis.worstKey, duration);
      }
    }).observe({ type: 'event', durationThreshold: 16 });`);
}

async function longestRecord(context: BrowserContext, url: string) {
  const list = await context.request.get(`${url}/api/incidents?limit=100`);
  const { items } = (await list.json()) as { items: { id: string; reference: string }[] };
  const records = await Promise.all(
    items.map(async ({ id, reference }) => {
      const record = await context.request.get(`${url}/api/incidents/${id}/record`);
      return { id, reference, characters: (await record.text()).length };
    }),
  );
  const [longest] = records.sort((one, other) => other.characters - one.characters);
  if (longest === undefined) throw new Error('The demonstration has no incident.');
  return longest;
}
