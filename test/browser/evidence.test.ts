import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { IncidentCase } from '../decision/incident-case.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';
import { collision, photograph, sheetsOf } from './evidence-desk.js';
import { stockFleet } from './small-fleet.js';

/** What waits on a device is tried again within a quarter of a minute. */
const SENDING = { timeout: 20_000 };

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

describe('the sheets for others', () => {
  it('shows an officer what is asked at the scene and nothing medical, and notes without signal that it was given', async () => {
    const one = await collision(desk);
    const page = await desk.visit('staff', `/incidents/${one.id}/officer`);
    const faults = listenForFaults(page);
    const sheet = page.locator('.given');
    await sheet.getByText('ABCD1234E607').waitFor();
    const words = await sheet.innerText();
    for (const told of [
      'TX 4711 AB',
      'Heron Rentals, 100 Dock Road, Pottsboro',
      'Rena Moss, 9 Oak Lane, Denison, 555-0142',
      'Tom Moss',
      '33° 49.80′ N, 96° 34.50′ W',
      '33.83000, -96.57500',
      'off Heron Cove, Lake Texoma',
    ]) {
      expect(words).toContain(told);
    }
    expect(words).not.toMatch(/wrist|stitches|1990|County Hospital|injur/i);
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'officer');
    await page.getByRole('button', { name: 'Given now: note it' }).click();
    await page.getByText('Say why it was given.').waitFor();
    await expectReach(page);
    await page.context().setOffline(true);
    await page.getByLabel('Name of the officer').fill('Pike');
    await page.getByLabel('Agency').fill('Game wardens');
    await page.getByLabel('Badge or number').fill('B-17');
    await page.getByRole('radio', { name: 'The officer asked for it' }).check();
    await page.getByRole('button', { name: 'Given now: note it' }).click();
    await page.getByText('Pike, Game wardens, badge B-17').waitFor();
    await page.getByText('Saved on this device, not yet sent').waitFor();
    await page.context().setOffline(false);
    await expect
      .poll(async () => (await one.authorities()).handedOver, SENDING)
      .toMatchObject([
        {
          basis: 'asked',
          at: { how: 'pressed' },
          what: expect.stringMatching(
            /^Officer’s sheet, PWC 7, version \d+ of the record, as of /,
          ) as unknown,
          sheet: { hullNumber: 'ABCD1234E607', riders: ['Tom Moss'], agreement: 'R-2026-118' },
        },
      ]);
    expect((await one.authorities()).officers).toMatchObject([
      { name: 'Pike', agency: 'Game wardens', badge: 'B-17' },
    ]);
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.printed').first().innerText()).toMatch(/^Printed .+ by .+, staff\.$/);
    expect(await page.getByText('Note that it was given').first().isVisible()).toBe(false);
    expect(await sheetsOf(page)).toBe(1);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('gives the other operator name, address and vessel, and writes down that it did', async () => {
    const one = await collision(desk);
    const page = await desk.visit('staff', `/incidents/${one.id}/other-operator`);
    const sheet = page.locator('.given');
    await sheet.getByText('TX 4711 AB').waitFor();
    const words = await sheet.innerText();
    expect(words).toContain('Rena Moss, 9 Oak Lane, Denison');
    expect(words).not.toMatch(/555-0142|wrist|Tom Moss|Lake Insurance|R-2026-118|ABCD1234E607/);
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'other-operator');
    await page.getByRole('radio', { name: 'In charge of the other vessel' }).check();
    await page.getByLabel('Their name').fill('Omar Lund');
    await page.getByRole('button', { name: 'Given now: note it' }).click();
    await page.getByText('Omar Lund').waitFor();
    const contacts = () => one.section<{ contacts: object[] }>('contacts');
    await expect
      .poll(async () => (await contacts()).contacts, SENDING)
      .toMatchObject([
        {
          party: 'other-party',
          direction: 'out',
          name: 'Omar Lund',
          summary: expect.stringContaining(
            'of PWC 7 given to whoever is in charge of the other vessel',
          ) as unknown,
        },
      ]);
    expect(JSON.stringify(await contacts())).not.toContain('Rena');
    await page.context().close();
  });

  it('says so when nothing is known, when there is nothing, and to those it is not for', async () => {
    const page = await desk.visit('staff', '/incidents/00000000-0000-4000-8000-000000000000/officer');
    await page.getByText('There is nothing at this address.').waitFor();
    await expectReach(page);
    const manager = await desk.house.signedIn('manager');
    const bare = await IncidentCase.open(manager, { said: 'help' });
    await page.goto(`${desk.url}/incidents/${bare.id}/officer`);
    await page.getByText('No craft is named in this incident yet.').waitFor();
    expect(await page.locator('.given').innerText()).toContain('Not written down yet');
    const called = await IncidentCase.open(manager, { craftNamed: ['PWC 9'] });
    await page.goto(`${desk.url}/incidents/${called.id}/officer`);
    await page.getByText('The record does not say who owns our craft.').waitFor();
    await expectReach(page);
    await page.context().setOffline(true);
    await page.getByLabel('Owner of our craft: name').fill('Heron Rentals');
    await page.getByLabel('Address of the owner').fill('100 Dock Road');
    await page.getByRole('button', { name: 'Put it on the sheet' }).click();
    await page.locator('.given').getByText('Heron Rentals, 100 Dock Road').waitFor();
    await page.context().setOffline(false);
    const craft = async () =>
      (await manager.get(`/api/incidents/${called.id}/sections/craft`).expect(200)).body as object;
    await expect.poll(craft, SENDING).toMatchObject({
      document: { craft: [{ id: 'PWC-9', ownerName: 'Heron Rentals', ownerContact: '100 Dock Road' }] },
    });
    await page.context().close();
    const counsel = await desk.visit('counsel', `/incidents/${bare.id}/other-operator`);
    await counsel.getByRole('heading', { name: 'Not yours to see' }).waitFor();
    await counsel.context().close();
  });
});

describe('the pictures to take', () => {
  it('are taken without signal and sent later, or cannot be taken for a reason', async () => {
    await stockFleet(desk.house);
    const one = await IncidentCase.open(await desk.house.signedIn('manager'), { craftNamed: ['PWC 7'] });
    const page = await desk.visit('staff', `/incidents/${one.id}/shots`);
    const faults = listenForFaults(page);
    const line = (name: string) =>
      page.getByRole('listitem').filter({ has: page.getByRole('heading', { name }) });
    await page.getByText('0 of 13 done').waitFor();
    await page.getByText('No thing is kept yet.').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await page.context().setOffline(true);
    await page
      .getByLabel('Take it Hull number (HIN), readable, PWC 7')
      .setInputFiles(await photograph('red'));
    await line('Hull number').getByText('Done, 1 picture').waitFor();
    await page.getByText('1 photograph is only on this device').waitFor();
    await line('Hour meter').getByText('It cannot be taken').click();
    await line('Hour meter').getByRole('button', { name: 'Keep this reason' }).click();
    await page.getByText('Say why it cannot be taken.').waitFor();
    await page.getByLabel('Why not: Hour meter, PWC 7').fill('Under water');
    await line('Hour meter').getByRole('button', { name: 'Keep this reason' }).click();
    await line('Hour meter').getByText('Cannot be taken: Under water').waitFor();
    await page.getByText('1 of 13 done, 1 cannot be taken').waitFor();
    await page.context().setOffline(false);
    await page.getByRole('img', { name: 'PWC 7: Hull number (HIN), readable' }).waitFor();
    expect(
      await one.browser.get(`/api/incidents/${one.id}/evidence`).then(({ body }) => body as object),
    ).toMatchObject({
      files: [
        { about: { shot: 'hull-number', craft: ['PWC-7'], caption: 'PWC 7: Hull number (HIN), readable' } },
      ],
    });
    const craft = async () =>
      (await one.browser.get(`/api/incidents/${one.id}/sections/craft`).expect(200)).body as object;
    const missed = [{ shot: 'hour-meter', reason: 'Under water' }];
    await expect.poll(craft, SENDING).toMatchObject({
      document: { craft: [{ id: 'PWC-7', ours: true, name: 'PWC 7', notPhotographed: missed }] },
    });
    const file = page.getByRole('listitem').filter({ has: page.getByRole('img') });
    await file.getByText('Say what it shows').click();
    await file.getByLabel('What it shows').fill('Hull number, scratched');
    await file.getByLabel('Why the words change').fill('Looked closer.');
    await file.getByRole('button', { name: 'Keep these words' }).click();
    await page.getByRole('img', { name: 'Hull number, scratched' }).waitFor();
    await expectReach(page);
    await takePictures(page, 'shots');
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('stand beside the things kept and what others hold', async () => {
    const one = await IncidentCase.open(await desk.house.signedIn('manager'), { said: 'help' });
    const page = await desk.visit('staff', `/incidents/${one.id}/shots`);
    await page.getByText('Add a thing').click();
    await page.getByLabel('What it is').fill('Lanyard, clip broken');
    await page.getByLabel('Kept where').fill('Office safe');
    await page.getByRole('button', { name: 'Add it' }).click();
    const thing = page.getByRole('listitem').filter({ hasText: 'Lanyard, clip broken' });
    await thing.getByText('It changes hands now').click();
    await thing.getByLabel('Who takes it').fill('Warden Pike');
    await thing.getByLabel('Why').fill('For the report');
    await thing.getByRole('button', { name: 'Note the hand-over' }).click();
    await thing.getByText(/to Warden Pike\. For the report/).waitFor();
    await page.getByText('Add what somebody holds').click();
    await page.getByLabel('What kind').selectOption({ label: 'Camera at a dock' });
    await page.getByLabel('Who holds it').fill('The marina next door');
    await page.getByLabel('Kept until').fill('2031-06-20T00:00');
    await page.getByRole('button', { name: 'Add it' }).last().click();
    const camera = page.getByRole('listitem').filter({ hasText: 'The marina next door' });
    await camera.getByText('may be gone then').waitFor();
    await camera.getByText('What came of it').first().click();
    await camera.getByLabel('What came of it').selectOption({ label: 'Asked for' });
    await camera.getByRole('button', { name: 'Keep this' }).click();
    await camera.getByText('Asked for', { exact: true }).first().waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'evidence-kept');
    await page.context().close();
  });
});
