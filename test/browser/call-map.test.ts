import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';
import { stockFleet } from './small-fleet.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
  await stockFleet(desk.house);
});
afterAll(() => desk.close());

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();
const mapOf = (page: Page) => page.getByRole('region', { name: 'Tap it on a map' });

/** Of whichever incident is the latest. */
async function positionInRecord(): Promise<{ latitude: number; longitude: number } | undefined> {
  const manager = await desk.house.signedIn('manager');
  const list = (await manager.get('/api/incidents').expect(200)).body as { items: { id: string }[] };
  const id = list.items[0]?.id ?? '';
  const answer = await manager.get(`/api/incidents/${id}/sections/time-and-place`);
  const { document } = answer.body as {
    document?: { position?: { value: { latitude: number; longitude: number } } };
  };
  return document?.position?.value;
}

describe('where it was, pressed on the map of a call', () => {
  it('works with no signal once the desk is on the phone, and is sent when there is signal', async () => {
    const page = await desk.visitOnDevice('/call', { context: { serviceWorkers: 'allow' } });
    const faults = listenForFaults(page);
    await page.getByRole('button', { name: /^PWC 7/ }).waitFor();
    await page.evaluate('navigator.serviceWorker.ready');
    await page.reload();
    await page.getByRole('button', { name: /^PWC 7/ }).waitFor();
    await page.context().setOffline(true);
    await press(page, /^PWC 7/);
    await press(page, 'Next');
    await press(page, 'No, elsewhere');
    await press(page, 'Tap it on a map');
    await mapOf(page).getByText('The dam').waitFor();
    await mapOf(page).locator('.state-line').waitFor({ state: 'attached' });
    await page.getByText('Tap where it is.').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await mapOf(page).click({ position: { x: 120, y: 120 } });
    await page.getByText(/^33° .+ of (Heron Cove|North dock|The dam)$/).waitFor();
    await takePictures(page, 'call-map');
    await press(page, 'Keep this');
    await page.getByText('tapped on the map').waitFor();
    await page.context().setOffline(false);
    await expect.poll(positionInRecord, { timeout: 20_000 }).toMatchObject({
      latitude: expect.closeTo(33.83, 1) as number,
      longitude: expect.closeTo(-96.57, 1) as number,
    });
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('needs no finger: the middle of the map is marked by a button', async () => {
    const page = await desk.visitOnDevice('/call');
    await press(page, /^PWC 7/);
    await press(page, 'Next');
    await press(page, 'No, elsewhere');
    await press(page, 'Tap it on a map');
    await mapOf(page).getByText('The dam').waitFor();
    await mapOf(page).focus();
    await page.keyboard.press('ArrowUp');
    await page.getByRole('button', { name: 'Mark the middle of the map' }).focus();
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Keep this' }).focus();
    await page.keyboard.press('Enter');
    await page.getByText('tapped on the map').waitFor();
    await page.context().close();
  });

  it('says so when its code cannot be had, and leaves the other ways', async () => {
    const page = await desk.visitOnDevice('/call');
    await page.route('**/assets/map-sheet*.js', (route) => route.abort());
    await press(page, /^PWC 7/);
    await press(page, 'Next');
    await press(page, 'No, elsewhere');
    await press(page, 'Tap it on a map');
    await page.getByText('The map could not be loaded.').waitFor();
    await page.unroute('**/assets/map-sheet*.js');
    await press(page, 'Heron Cove');
    await page.getByRole('heading', { name: 'Is everyone accounted for?' }).waitFor();
    await page.context().close();
  });
});
