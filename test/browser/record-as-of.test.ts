import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { create } from '../accounts/house.js';
import { BrowserDesk, expectReach, smallTargets, takePictures } from './desk.js';
import { collision } from './evidence-desk.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
});
afterAll(() => desk.close());

describe('the history and the whole record', () => {
  it('tell who changed what, when and why, and what the record said before', async () => {
    const one = await collision(desk);
    const before = new Date(Date.parse(desk.house.now()) + 1000).toISOString();
    desk.house.letPass(60_000);
    await one.unhurt();
    const counsel = await desk.house.person('counsel');
    const page = await desk.visit(counsel, '/');
    await create(one.browser, `/api/incidents/${one.id}/counsel`, { account: counsel.id }).expect(200);
    await page.goto(`${desk.url}/incidents/${one.id}/history`);
    await page.getByText('Why: She said it was a bruise.').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'history');
    await page.getByLabel('Section').selectOption({ label: 'People' });
    await page.getByRole('link', { name: 'History of Rena Moss: What became of them' }).first().click();
    await page.getByText('Only: Rena Moss: What became of them').waitFor();
    await expect
      .poll(() => page.locator('.change dd').allInnerTexts())
      .toEqual([
        expect.stringMatching(/^Was: Injured\s+Unhurt/) as unknown,
        expect.stringMatching(/^Injured/) as unknown,
      ]);
    await page
      .getByRole('link', { name: /^The record as of/ })
      .last()
      .click();
    await page.getByRole('heading', { name: /^Record, / }).waitFor();
    await page.goto(`${desk.url}/incidents/${one.id}/record?at=${before}`);
    await page.getByText('broken wrist').waitFor();
    const people = await page.locator('.record-sheet', { hasText: 'Rena Moss' }).innerText();
    expect(people).toMatch(/On which craft\s+PWC 7/);
    await page.getByText('There was no file.').waitFor();
    const then = page.getByRole('region', { name: 'What the law called for' });
    await then.getByText(/^Determination \d+, /).waitFor();
    await page.getByRole('region', { name: 'Holds' }).getByText('Nothing was held.').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'record-as-of');
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByLabel('As of').isVisible()).toBe(false);
    expect(await page.locator('.printed').innerText()).toMatch(/^Printed .+, counsel\.$/);
    await page.emulateMedia({ media: null });
    await page.getByRole('link', { name: 'As it stands now' }).click();
    await page.getByText('As it stands, ').waitFor();
    expect(await page.getByText('broken wrist').count()).toBe(0);
    await page.getByLabel('As of').fill('2020-01-01T00:00');
    await page.getByRole('button', { name: 'Show it as of then' }).click();
    await page.getByText('Nobody had written anything by then.').waitFor();
    await page.goto(`${desk.url}/incidents/${one.id}/record?at=yesterday`);
    await page.getByRole('alert').waitFor();
    await expectReach(page);
    await page.context().close();
  });
});
