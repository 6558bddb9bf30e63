import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Browser } from '../accounts/house.js';
import { BrowserDesk, expectReach, smallTargets, takePictures } from './desk.js';
import { craft, press, standingOf, stock } from './outing-desk.js';

let desk: BrowserDesk;
let staff: Browser;
beforeAll(async () => {
  desk = await BrowserDesk.open();
  staff = await desk.house.signedIn('manager');
  await stock(staff);
});
afterAll(() => desk.close());

const standing = (unit: string) => standingOf(staff, unit);

describe('the closing count', () => {
  it('asks in, out or elsewhere for every craft, keeps answers without signal, and looks for what is out', async () => {
    const page = await desk.visit('staff', '/out-and-back/closing-count');
    await page.getByText('No count was made yet.').waitFor();
    await press(page, 'Begin');
    await page.getByText('5 craft left').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await press(page, 'Out: PWC 7');
    await press(page, 'In: PWC 8');
    await page.getByText('3 craft left').waitFor();
    await press(page, 'Sign and close the count');
    await page.getByText('Not answered yet: Pontoon 2, PWC 9, PWC 10.').waitFor();
    await takePictures(page, 'closing-count');
    await page.context().setOffline(true);
    await press(page, 'Elsewhere: PWC 9');
    await press(page, 'Keep this');
    await page.getByText('Say where it is.').waitFor();
    await page.getByLabel('Where is it').fill('The shop');
    await press(page, 'Keep this');
    await press(page, 'In: Pontoon 2');
    await press(page, 'In: PWC 10');
    await page.getByText('3 entries are only on this phone').waitFor();
    await press(page, 'Sign and close the count');
    await page.getByText('They are sent when there is signal; sign then.').waitFor();
    await page.context().setOffline(false);
    await expect.poll(() => page.getByText('only on this phone').count()).toBe(0);
    await press(page, 'Sign and close the count');
    await page.getByRole('heading', { name: 'Being looked for now' }).waitFor();
    await expectReach(page);
    await takePictures(page, 'closing-count-signed');
    await page.getByRole('link', { name: 'PWC 7' }).click();
    await page.getByRole('heading', { name: 'Not back: PWC 7' }).waitFor();
    await page.context().close();
  });
});

describe('a phone on which nobody is signed in', () => {
  it('marks back, stamps and answers the count by unit name, and shows no name and no number', async () => {
    const page = await desk.visitOnDevice('/out-and-back');
    const shown: string[] = [];
    page.on('response', (response) => {
      if (response.url().includes('/api/')) shown.push(response.url());
    });
    await press(page, 'PWC 7 is back');
    await expect.poll(() => standing('PWC 7')).toBe('in');
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'out-and-back-device');
    await press(page, /^Undo$/);
    await expect.poll(() => standing('PWC 7')).toBe('late');
    await press(page, 'PWC 7 is not back: search sheet and ladder');
    await press(page, 'Renter called');
    await page.getByRole('button', { name: /^Undo: Renter called/ }).waitFor();
    await page.getByText('sign in to say it').waitFor();
    expect(await page.locator('main').innerText()).not.toMatch(/Dana|580-555|pickup/);
    await expectReach(page);
    await takePictures(page, 'not-back-device');
    await page.getByRole('link', { name: 'Out and back' }).last().click();
    await page.getByRole('link', { name: 'Closing count' }).click();
    await press(page, 'Begin');
    await page.getByText('5 craft left').waitFor();
    await press(page, 'In: PWC 9');
    await page.getByText('4 craft left').waitFor();
    await page.getByText('Whoever signs for the count signs in').waitFor();
    await expectReach(page);
    expect(shown.filter((url) => /\/api\/(outings|not-back)$/.test(url.split('?')[0] ?? ''))).toEqual([
      expect.stringContaining('/api/not-back'),
    ]);
    await page.context().close();
  });

  it('speaks Spanish', async () => {
    const page = await desk.visit('staff', '/out-and-back', { context: { locale: 'es-US' } });
    await page.getByRole('heading', { name: 'Salidas y regresos' }).waitFor();
    await craft(page, 'PWC 7')
      .getByText(/^atrasada 4\d min/)
      .waitFor();
    await expectReach(page);
    await page.goto(`${desk.url}/out-and-back/closing-count`);
    await page.getByText(/: abierto, continuar/).click();
    await page.getByText('faltan 4').waitFor();
    await page.context().close();
  });
});
