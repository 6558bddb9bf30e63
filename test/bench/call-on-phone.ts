import type { CDPSession, Page } from 'playwright-core';
import { type PhoneDesk, slowPage } from './phone-desk.js';

const ROUNDS = 5;

export interface CallOnPhone {
  /** From the address until an answer can be typed, on a phone that never had the desk: milliseconds a round. */
  readonly first: readonly number[];
  /** The same when it is opened again. */
  readonly again: readonly number[];
  /** Bytes of script that came over the wire for the page, compressed. */
  readonly scriptBytes: number;
}

/** How long somebody waits for the call page. */
export async function callOnPhone(desk: PhoneDesk): Promise<CallOnPhone> {
  const first: number[] = [];
  const again: number[] = [];
  let scriptBytes = 0;
  for (let round = 0; round < ROUNDS; round += 1) {
    const context = await desk.enrolled();
    const fresh = await slowPage(context);
    const counted = countScript(fresh.wire);
    first.push(await untilUsable(fresh.page, desk.url));
    scriptBytes = Math.max(scriptBytes, counted());
    await fresh.page.evaluate('navigator.serviceWorker.ready');
    await fresh.page.close();
    const { page } = await slowPage(context);
    again.push(await untilUsable(page, desk.url));
    await context.close();
  }
  return { first, again, scriptBytes };
}

async function untilUsable(page: Page, url: string): Promise<number> {
  const begun = performance.now();
  await page.goto(`${url}/call`, { waitUntil: 'commit' });
  await page.getByRole('searchbox').waitFor();
  return performance.now() - begun;
}

/** What the wire carries of scripts from now on. */
function countScript(wire: CDPSession): () => number {
  const scripts = new Set<string>();
  let bytes = 0;
  wire.on('Network.responseReceived', ({ requestId, type }) => {
    if (type === 'Script') scripts.add(requestId);
  });
  wire.on('Network.loadingFinished', ({ requestId, encodedDataLength }) => {
    if (scripts.has(requestId)) bytes += encodedDataLength;
  });
  return () => bytes;
}
