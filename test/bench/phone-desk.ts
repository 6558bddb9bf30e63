import { randomUUID } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext, CDPSession, Page } from 'playwright-core';
import { createApp } from '../../src/server/create-app.js';
import { loadDemo } from '../../src/server/demo/demo.api.js';
import { readConfig } from '../../src/server/platform/config.js';
import { launchBrowser } from '../support/browser.js';

/** A phone some years old at the water: a quarter of this processor, 1.6 Mbit/s, an answer after 150 ms. */
const CPU_RATE = 4;
const BYTES_PER_SECOND = 1_600_000 / 8;
const LATENCY_MS = 150;

export interface PhoneDesk {
  readonly url: string;
  /** A browser with nothing in it but who uses it. */
  readonly enrolled: () => Promise<BrowserContext>;
  readonly signedIn: (signInName: string) => Promise<BrowserContext>;
  readonly close: () => Promise<void>;
}

/** The service with the demonstration in it, and a browser that is as slow as a phone. */
export async function openPhoneDesk(): Promise<PhoneDesk> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-phone-'));
  const timeZone = 'America/Chicago';
  const file = join(folder, 'desk.sqlite');
  const app = await createApp(
    readConfig({
      DATABASE_URL: `sqlite:${file}`,
      BUSINESS_TIME_ZONE: timeZone,
      MAIL_FOLDER: join(folder, 'mail'),
      EVIDENCE_FOLDER: join(folder, 'evidence'),
    }),
  );
  const people = await loadDemo(app, { timeZone, tell: () => undefined });
  await app.listen(0, '127.0.0.1');
  const url = `http://127.0.0.1:${(app.getHttpServer().address() as AddressInfo).port}`;
  const browser = await launchBrowser();
  const open = (): Promise<BrowserContext> =>
    browser.newContext({ viewport: { width: 390, height: 844 }, locale: 'en-US', timezoneId: timeZone });
  const signedIn = async (signInName: string): Promise<BrowserContext> => {
    const context = await open();
    const password = people.find((one) => one.signInName === signInName)?.password;
    await send(context, `${url}/api/session`, { signInName, password });
    return context;
  };
  const administrator = await signedIn(people.find(({ role }) => role === 'administrator')?.signInName ?? '');
  return {
    url,
    signedIn,
    enrolled: async () => {
      const { code } = await send(administrator, `${url}/api/devices`, { name: `Phone ${randomUUID()}` });
      const context = await open();
      await send(context, `${url}/api/device`, { code });
      return context;
    },
    close: async () => {
      await browser.close();
      await app.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function send(context: BrowserContext, address: string, data: object): Promise<{ code?: string }> {
  const headers = { 'idempotency-key': randomUUID() };
  const answer = await context.request.post(address, { data, headers });
  if (!answer.ok()) throw new Error(`${address}: ${answer.status()} ${await answer.text()}`);
  return (await answer.json()) as { code?: string };
}

/** A page of a browser that is as slow as a phone, with the wire on which the browser tells what it loads. */
export async function slowPage(context: BrowserContext): Promise<{ page: Page; wire: CDPSession }> {
  const page = await context.newPage();
  const wire = await context.newCDPSession(page);
  await wire.send('Network.enable');
  await wire.send('Network.emulateNetworkConditions', {
    offline: false,
    latency: LATENCY_MS,
    downloadThroughput: BYTES_PER_SECOND,
    uploadThroughput: BYTES_PER_SECOND,
  });
  await wire.send('Emulation.setCPUThrottlingRate', { rate: CPU_RATE });
  return { page, wire };
}
