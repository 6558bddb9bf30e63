import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { create, PASSWORD } from '../accounts/house.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
});
afterAll(() => desk.close());

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

describe('a PIN', () => {
  it('is chosen with the password, typed twice, and stands for the name that was picked on a device', async () => {
    const staff = await desk.house.person('staff');
    const own = await desk.visit(staff, '/password');
    const faults = listenForFaults(own);
    await own.getByRole('link', { name: 'Your PIN for shared phones' }).click();
    await own.getByLabel('Present password *').fill('not my password at all');
    await own.getByLabel('New PIN *').fill('4071');
    await own.getByLabel('The same PIN once more *').fill('4072');
    await press(own, 'Keep this PIN');
    await own.getByText('The same PIN once more: Not the same as the PIN above.').waitFor();
    await own.getByLabel('The same PIN once more *').fill('4071');
    await press(own, 'Keep this PIN');
    await own.getByText('Present password: Is not your present password.').waitFor();
    await expectReach(own);
    expect(await smallTargets(own)).toEqual([]);
    await takePictures(own, 'pin');
    await own.getByLabel('Present password *').fill(PASSWORD);
    await press(own, 'Keep this PIN');
    await own.getByText('Your PIN is kept.').waitFor();
    expect(faults).toEqual([]);
    await own.context().close();

    const page = await desk.visitOnDevice('/who');
    await page.getByText('Nobody is on the roster today.').waitFor();
    await expectReach(page);
    const today = await page.evaluate<string>("new Date().toLocaleDateString('sv-SE')");
    const manager = await desk.house.signedIn('manager');
    const entry = { accountId: staff.id, duty: 'dock', from: today, to: today };
    await create(manager, '/api/roster', entry).expect(201);
    await page.reload();
    const name = page.getByRole('button', { name: new RegExp(`^${staff.name}`) });
    await name.waitFor();
    await expectReach(page);
    await takePictures(page, 'who-pick');
    await name.click();
    await page.getByRole('heading', { name: `${staff.name} is writing` }).waitFor();
    await page.reload();
    await page.getByText(/Since \d\d:\d\d, not confirmed yet\./).waitFor();

    const [asked] = await Promise.all([
      page.waitForRequest('**/api/device/confirmations'),
      page
        .getByLabel('PIN *')
        .fill('5093')
        .then(() => press(page, 'They are mine: confirm')),
    ]);
    expect(asked.headers()['desk-person']).toBe(staff.id);
    await page.getByText('PIN: Is not the PIN of that person.').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'who');
    await page.getByLabel('PIN *').fill('4071');
    await press(page, 'They are mine: confirm');
    await page.getByText(/^Confirmed \d\d:\d\d\./).waitFor();
    await press(page, 'Somebody else writes');
    await page.getByText(`${staff.name} is not picked any more.`).waitFor();
    await press(page, 'Undo');
    await page.getByRole('heading', { name: `${staff.name} is writing` }).waitFor();

    await page.route('**/api/**', (route) => route.abort());
    await page.getByLabel('PIN *').fill('4071');
    await press(page, 'They are mine: confirm');
    await page.getByText('The service could not be reached.').waitFor();
    await press(page, 'Somebody else writes');
    await page.getByText(`${staff.name} is not picked any more.`).waitFor();
    await page.reload();
    await page.getByText('No signal. This is what this device kept at').waitFor();
    await name.waitFor();
    await page.context().close();
  });

  it('puts the picked name under a call from that device', async () => {
    const staff = await desk.house.person('staff');
    const page = await desk.visitOnDevice('/who', { context: { locale: 'es-MX' } });
    const today = await page.evaluate<string>("new Date().toLocaleDateString('sv-SE')");
    const manager = await desk.house.signedIn('manager');
    const entry = { accountId: staff.id, duty: 'dock', from: today, to: today };
    await create(manager, '/api/roster', entry).expect(201);
    await page.reload();
    await page.getByRole('heading', { name: '¿Quién escribe?' }).waitFor();
    await page.getByRole('button', { name: new RegExp(`^${staff.name}`) }).click();
    await page.getByRole('heading', { name: `Escribe ${staff.name}` }).waitFor();
    await page.goto(`${desk.url}/call`);
    await page.getByRole('button', { name: /911/ }).click();
    const calls = async () =>
      (await manager.get('/api/incidents').expect(200)).body as { items: { id: string }[] };
    await expect.poll(async () => (await calls()).items.length).toBe(1);
    const id = (await calls()).items[0]?.id ?? '';
    const log = (await manager.get(`/api/incidents/${id}/amendments`).expect(200)).body as object;
    expect(JSON.stringify(log)).toContain(staff.name);
    await page.context().close();
  });
});
