import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BrowserDesk, expectReach, PHONE, smallTargets, takePictures, WIDE } from './desk.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
});
afterAll(() => desk.close());

/** Rows in which the links and names at the top stand, as far as they are seen. */
const rowsAtTop = (page: Page): Promise<number> =>
  page.evaluate<number>(
    `new Set([...document.querySelectorAll('.head a, .head summary')]
      .filter((one) => one.checkVisibility())
      .map((one) => { const { top, height } = one.getBoundingClientRect(); return Math.round((top + height / 2) / 24); })).size`,
  );
const opened = (page: Page) => page.locator('.head details[open]');

describe('the top of every page', () => {
  it.each(['en-US', 'es-US'])('is one row for an administrator at a desk (%s)', async (locale) => {
    const page = await desk.visit('administrator', '/law', { viewport: WIDE, context: { locale } });
    await page.locator('.row-of-pages').waitFor();
    for (const width of [1280, 1024]) {
      await page.setViewportSize({ width, height: 800 });
      expect(await rowsAtTop(page)).toBe(1);
    }
    await page.context().close();
  });

  it('keeps the rest behind a name, for mouse and keyboard, and lies over nothing once it is left', async () => {
    const page = await desk.visit('administrator', '/fleet', { viewport: WIDE });
    const nav = page.getByRole('navigation', { name: 'Pages' });
    const more = nav.locator('summary');
    await more.focus();
    await page.keyboard.press('Enter');
    await nav.getByRole('link', { name: 'Fleet', exact: true }).waitFor();
    expect(await nav.locator('[aria-current]').allInnerTexts()).toEqual(['Fleet']);
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'top-row-more');
    await more.focus();
    if ((await opened(page).count()) === 0) await page.keyboard.press('Enter');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Escape');
    expect(await opened(page).count()).toBe(0);
    expect(await more.evaluate((element) => element === document.activeElement)).toBe(true);
    await more.click();
    await page.getByRole('heading', { level: 1 }).click();
    expect(await opened(page).count()).toBe(0);
    await more.click();
    await nav.getByRole('link', { name: 'Places', exact: true }).click();
    await page.getByRole('heading', { name: 'Named places' }).waitFor();
    expect(await opened(page).count()).toBe(0);
    await page.locator('.head > details > summary').click();
    await page.getByRole('button', { name: 'Sign out' }).waitFor();
    await expectReach(page);
    await page.context().close();
  });

  it('is all behind one name on a phone', async () => {
    const page = await desk.visit('administrator', '/fleet', { viewport: PHONE });
    await page.locator('summary', { hasText: 'Pages' }).click();
    const links = page.getByRole('navigation', { name: 'Pages' }).getByRole('link');
    expect(await links.allInnerTexts()).toContain('Follow-up');
    expect(await links.allInnerTexts()).toContain('Mail');
    await expectReach(page);
    await page.context().close();
  });
});
