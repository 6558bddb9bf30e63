import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
});
afterAll(() => desk.close());

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const open = (page: Page, name: RegExp) => page.locator('summary').filter({ hasText: name }).first().click();
const inForce = (page: Page) => page.getByRole('region', { name: 'In force today' });
const entries = (page: Page) =>
  page.getByRole('region', { name: 'Everything that was adopted' }).locator('.log > li');

describe('the house rules', () => {
  it('are adopted, corrected and taken out of force, and what stood before stays readable', async () => {
    const page = await desk.visit('administrator', '/house-rules');
    const faults = listenForFaults(page);
    await page.getByText('No rules are in force.').waitFor();
    await expectReach(page);
    await open(page, /^Adopt rules/);
    await page.getByLabel('Written document that says so').fill('Dock rules, edition 1');
    await press(page, 'Adopt what is ticked');
    await page.getByText('Tick at least one rule').waitFor();
    await page.getByLabel('Ride where the water is at least … ft deep.', { exact: true }).check();
    await page.getByLabel('The operator wears the lanyard, always.').check();
    const depth = page.getByLabel('Figure of: Ride where the water is at least … ft deep.');
    expect(await depth.inputValue()).toBe('3');
    await depth.fill('');
    await press(page, 'Adopt what is ticked');
    await page.getByText('Give the figure that the written rule names.').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'house-rules-form');
    await depth.fill('4');
    await press(page, 'Adopt what is ticked');
    await page.getByText('Written down.').waitFor();
    await inForce(page).getByText('Ride where the water is at least 4 ft deep.').waitFor();
    expect(await entries(page).count()).toBe(1);

    await open(page, /^Correct this entry/);
    await page.getByLabel('Figure of: Ride where the water is at least … ft deep.').fill('5');
    await press(page, 'Save the correction');
    await inForce(page).getByText('Ride where the water is at least 5 ft deep.').waitFor();
    await inForce(page).getByText('The operator wears the lanyard, always.').waitFor();
    expect(await entries(page).locator('strong').allTextContents()).toEqual([
      'In force',
      'Corrected by a later entry for the same day',
    ]);
    await takePictures(page, 'house-rules');
    await expectReach(page);

    await open(page, /^Take the rules/);
    await page.getByLabel('Written document that says so').fill('Letter of the owner');
    await press(page, 'Take them out of force');
    await inForce(page).getByText('No rules are in force: Letter of the owner took them out.').waitFor();
    expect(await entries(page).count()).toBe(3);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('are read by managers, who are told who writes them down, and say so when they cannot be had', async () => {
    const page = await desk.visit('manager', '/house-rules');
    await page.getByText('The owner adopts rules').waitFor();
    expect(await page.locator('main summary').count()).toBe(0);
    await expectReach(page);
    const fault = { type: 'about:blank', title: 'The service failed', status: 500, errors: [] };
    await page.route('**/api/house-rules', (route) => route.fulfill({ status: 500, json: fault }));
    await page.reload();
    await page.getByRole('button', { name: 'Try again' }).waitFor();
    await expectReach(page);
    await page.context().close();
  });
});
