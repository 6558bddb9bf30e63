import { once } from 'node:events';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Browser } from 'playwright-core';
import { launchBrowser } from './browser.js';

describe('the browser that npm ci brings', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launchBrowser();
  });
  afterAll(() => browser.close());

  it('is a Chromium that outlives its pages', async () => {
    const first = await browser.newPage();
    await first.close();
    const second = await browser.newPage();
    expect(await second.evaluate('navigator.userAgent')).toMatch(/Chrome\/\d+/);
  });

  it('keeps one origin from reading another', async () => {
    const other = createServer((_request, response) => response.end('secret')).listen(0, '127.0.0.1');
    await once(other, 'listening');
    const { port } = other.address() as AddressInfo;
    const page = await browser.newPage();
    const read = `fetch('http://127.0.0.1:${port}/').then((got) => got.text(), () => 'refused')`;
    expect(await page.evaluate(read)).toBe('refused');
    other.close();
  });
});
