import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readPdf } from '../report/read-pdf.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
});
afterAll(() => desk.close());

describe('the card for staff', () => {
  it('opens on a device without signal, in both languages, and prints on one sheet', async () => {
    const page = await desk.visitOnDevice('/call', { context: { serviceWorkers: 'allow' } });
    const faults = listenForFaults(page);
    await page.evaluate('navigator.serviceWorker.ready');
    await page.context().setOffline(true);
    await page.getByRole('link', { name: 'What to say, and what not' }).click();
    await page.getByRole('heading', { name: 'Do not say this' }).waitFor();
    await page.reload();
    await page.getByText('What counsel or the manager tells you comes before it.').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'what-to-say');
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
    expect(await sheetsOf(page)).toBe(1);
    await page.emulateMedia({ media: null });
    await page.evaluate("localStorage.setItem('desk-language', 'es')");
    await page.reload();
    await page.getByRole('heading', { name: 'No diga esto' }).waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await sheetsOf(page)).toBe(1);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});

/** How many sheets of letter paper it takes. */
async function sheetsOf(page: Page): Promise<number> {
  return (await readPdf(await page.pdf({ format: 'Letter' }))).pages;
}
