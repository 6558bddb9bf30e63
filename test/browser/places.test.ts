import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures, WIDE } from './desk.js';
import { stockFleet } from './small-fleet.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
  await stockFleet(desk.house);
});
afterAll(() => desk.close());

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const entered = (page: Page) => page.getByRole('region', { name: 'What is entered' });

describe('stations and named places', () => {
  it('are read by whoever works here, also without signal', async () => {
    const page = await desk.visit('staff', '/places');
    await page.getByRole('link', { name: /North dock\s+3 numbers\s+100 Dock Road/ }).waitFor();
    await page.getByRole('link', { name: /^Heron Cove/ }).waitFor();
    expect(await page.getByRole('link', { name: /^Add/ }).count()).toBe(0);
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'places');
    await page.getByRole('link', { name: /^North dock/ }).click();
    expect(await entered(page).getByRole('link', { name: '555-0101' }).getAttribute('href')).toBe(
      'tel:555-0101',
    );
    await entered(page).getByText('33.82500, -96.58000 (degrees, WGS 84)').waitFor();
    const sunset = page.getByRole('definition').filter({ hasText: /^\d\d:\d\d$/ });
    expect(await sunset.count()).toBe(1);
    await expectReach(page);
    await takePictures(page, 'station');
    await page.route('**/api/**', (route) => route.abort());
    await page.goto(`${desk.url}/places`);
    await page.getByText('No signal. This is what this device kept at').waitFor();
    await page.getByRole('link', { name: /^North dock/ }).waitFor();
    await page.context().close();
  });

  it('are added and changed by managers, number by number', async () => {
    const page = await desk.visit('manager', '/places');
    const faults = listenForFaults(page);
    await page.getByRole('link', { name: 'Add a station' }).click();
    await page.getByLabel('Name of the station *').fill('South dock');
    await page.getByLabel('Time zone *').fill('America/Chicago');
    await page.getByLabel('State', { exact: true }).selectOption('TX');
    await page.getByLabel('Position').fill('33 49.08 N 96 34.26 W');
    await press(page, 'Add: number');
    const first = page.getByRole('group', { name: 'number 1' });
    await first.getByLabel('Who that is *').selectOption('tow');
    await first.getByLabel('Who answers *').fill('Lake tow');
    await press(page, 'Add a station');
    await first.getByText('Give a telephone number or a radio channel.').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'station-add');
    await first.getByLabel('Radio channel').fill('VHF 16');
    await press(page, 'Add: number');
    await press(page, 'Take out: number 2');
    await press(page, 'Add a station');
    await page.getByRole('heading', { name: 'South dock' }).waitFor();
    await entered(page).getByText('VHF 16').waitFor();
    await page.getByText('Change what is entered').click();
    await page.getByLabel('Address that an ambulance is told').fill('1 South Ramp Road');
    await press(page, 'Keep the change');
    await page.getByText('Kept as changed.').waitFor();
    await page.getByText('Address that an ambulance is told: from nothing to 1 South Ramp Road').waitFor();

    await page.goto(`${desk.url}/places/places/add`);
    await page.getByLabel('Name *').fill('The cut');
    await page.getByLabel('Also called').fill('The narrows, Narrow cut');
    await page.getByLabel('Position').fill('somewhere');
    await press(page, 'Add a place');
    await page.getByRole('alert').waitFor();
    await page.getByLabel('Position').fill('33.8205, -96.575');
    await press(page, 'Add a place');
    await page.getByRole('heading', { name: 'The cut' }).waitFor();
    await entered(page).getByText('The narrows, Narrow cut').waitFor();
    expect(faults).toEqual([]);
    await page.context().close();
    const staff = await desk.visit('staff', '/places/stations/add');
    await staff.getByText('Managers and administrators add to this list.').waitFor();
    await staff.context().close();
  });
});

describe('policies', () => {
  it('are empty at first, added with the craft that they name, and not shown to staff', async () => {
    const page = await desk.visit('manager', '/policies', { viewport: WIDE });
    await page.getByText('No policy is entered.').waitFor();
    await expectReach(page);
    await page.getByRole('link', { name: 'Add a policy' }).click();
    await page.getByLabel('Number of the policy *').fill('W-20114');
    await page.getByLabel('Insurer *').fill('Harbor Mutual');
    await page.getByLabel('First day *').fill('2026-04-01');
    await page.getByLabel('Last day *').fill('2026-03-31');
    await page.getByLabel('PWC 7').check();
    await page.getByLabel('Deductible').fill('2500.50');
    await press(page, 'Add a policy');
    await page.getByText('Last day: Must not be before the first day.').waitFor();
    await page.getByLabel('Last day *').fill('2027-03-31');
    await press(page, 'Add a policy');
    await page.getByRole('heading', { name: 'Harbor Mutual W-20114' }).waitFor();
    await entered(page).getByText('$2,500.50').waitFor();
    await entered(page).getByText('PWC 7').waitFor();
    await expectReach(page);
    await page.getByRole('link', { name: 'Insurance policies' }).click();
    await page
      .getByRole('link', { name: /Harbor Mutual W-20114\s+1 craft\s+1 April 2026 to 31 March 2027/ })
      .waitFor();
    await takePictures(page, 'policies');
    await page.context().close();
    const staff = await desk.visit('staff', '/policies');
    await staff.getByRole('heading', { name: 'Not yours to see' }).waitFor();
    await staff.context().close();
  });
});
