import { afterAll, beforeAll, expect, it } from 'vitest';
import { openIncident } from '../follow-up/desk.js';
import { BrowserDesk, expectReach, PHONE, smallTargets, takePictures } from './desk.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
});
afterAll(() => desk.close());

it('shows a manager the history of a period, and gives it out as workbook and paper', async () => {
  const manager = await desk.house.person('manager');
  const page = await desk.visit(manager, '/renewal', { viewport: PHONE });
  await page.getByText('That is no sign that nothing did.').waitFor();
  await expectReach(page);
  await openIncident(await desk.house.signedIn(manager), desk.house.now());
  const day = desk.house.now().slice(0, 10);
  await page.getByLabel('First day').fill(`${Number(day.slice(0, 4)) - 1}-01-01`);
  await page.getByLabel('Last day').fill(`${Number(day.slice(0, 4)) - 2}-01-01`);
  await page.getByText('The last day is before the first.').waitFor();
  await page.getByLabel('Last day').fill(`${Number(day.slice(0, 4)) + 1}-01-01`);
  await page.getByRole('button', { name: 'Show it' }).click();
  await page.getByText('1 incident', { exact: true }).waitFor();
  await page.getByText('and of 1 incidents in which nobody is listed').waitFor();
  await page.getByText('None was entered, so no rate can be told.').waitFor();
  await expectReach(page);
  expect(await smallTargets(page)).toEqual([]);
  await takePictures(page, 'renewal');
  for (const name of ['As a workbook (XLSX)', 'On paper (PDF)']) {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name }).click(),
    ]);
    expect(download.suggestedFilename()).toMatch(/^incident-history-.+\.(xlsx|pdf)$/);
  }
  await page.context().close();
  const staff = await desk.visit('staff', '/renewal');
  await staff.getByRole('heading', { level: 1 }).waitFor();
  expect(await staff.getByLabel('First day').count()).toBe(0);
  await staff.context().close();
});
