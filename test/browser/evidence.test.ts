import type { Page } from 'playwright-core';
import type { AuthoritiesSection } from '../../shared/record/response-sections.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { IncidentCase, told } from '../decision/incident-case.js';
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

describe('the sheets for others', () => {
  it('shows an officer what is asked at the scene and nothing medical, and notes without signal that it was given', async () => {
    const one = await collision();
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
      .poll(async () => (await one.authorities()).handedOver)
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
    const one = await collision();
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
      .poll(async () => (await contacts()).contacts)
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
    const bare = await IncidentCase.open(await desk.house.signedIn('manager'), { said: 'help' });
    await page.goto(`${desk.url}/incidents/${bare.id}/officer`);
    await page.getByText('No craft is named in this incident yet.').waitFor();
    expect(await page.locator('.given').innerText()).toContain('Not written down yet');
    await expectReach(page);
    await page.context().close();
    const counsel = await desk.visit('counsel', `/incidents/${bare.id}/other-operator`);
    await counsel.getByRole('heading', { name: 'Not yours to see' }).waitFor();
    await counsel.context().close();
  });
});

/** PWC 7 and its driver, who is hurt, in a record with more than anybody outside may be told. */
async function collision() {
  const one = await IncidentCase.open(await desk.house.signedIn('manager'), { craftNamed: ['PWC 7'] });
  await one.write('craft', {
    craft: [
      {
        id: 'c1',
        ours: true,
        name: 'PWC 7',
        type: told('personal-watercraft'),
        hullNumber: told('ABCD1234E607'),
        registrationNumber: told('TX 4711 AB'),
        colours: 'red and white',
        ownerName: 'Heron Rentals',
        ownerContact: '100 Dock Road, Pottsboro',
        insurer: 'Lake Insurance',
        aboard: told(2),
      },
    ],
  });
  await one.write('people', {
    everyoneAccountedFor: told('yes'),
    people: [
      {
        id: 'p1',
        name: 'Rena Moss',
        address: '9 Oak Lane, Denison',
        phone: '555-0142',
        birthDate: told('1990-04-02'),
        role: told('operator'),
        craft: 'c1',
        outcome: told('injured'),
        injuries: [{ id: 'i1', nature: told('broken wrist') }],
        hospital: told('County Hospital'),
      },
      { id: 'p2', name: 'Tom Moss', role: told('passenger'), craft: 'c1', outcome: told('unhurt') },
    ],
  });
  await one.write('time-and-place', {
    occurred: told({ at: '2026-06-13T15:10:00-05:00', precision: 'about', withinMinutes: 10 }),
    timeZone: told('America/Chicago'),
    position: told({ latitude: 33.83, longitude: -96.575 }),
    description: told('off Heron Cove'),
    waterBody: told('Lake Texoma'),
  });
  await one.write('rental', { agreement: 'R-2026-118' });
  const section = async <Document>(name: string): Promise<Document> =>
    (
      (await one.browser.get(`/api/incidents/${one.id}/sections/${name}`).expect(200)).body as {
        document: Document;
      }
    ).document;
  return { id: one.id, section, authorities: () => section<AuthoritiesSection>('authorities') };
}

/** How many sheets of letter paper it takes. */
async function sheetsOf(page: Page): Promise<number> {
  return (await readPdf(await page.pdf({ format: 'Letter' }))).pages;
}
