import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Browser, create, type Person } from '../accounts/house.js';
import { craftOf, IncidentCase } from '../decision/incident-case.js';
import {
  BrowserDesk,
  choose,
  expectReach,
  listenForFaults,
  smallTargets,
  takePictures,
  WIDE,
} from './desk.js';
import { stockFleet } from './small-fleet.js';

let desk: BrowserDesk;
let manager: Person;
let asManager: Browser;
beforeAll(async () => {
  desk = await BrowserDesk.open();
  await stockFleet(desk.house);
  manager = await desk.house.person('manager');
  asManager = await desk.house.signedIn(manager);
});
afterAll(() => desk.close());

const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' }).click();
const fold = (page: Page, title: string) => page.locator('details').filter({ hasText: title }).first();
const open = (page: Page, title: string) => fold(page, title).locator('summary').click();
const section = (page: Page, name: string) => page.getByRole('region', { name });
const change = async (id: string, version: number, body: object): Promise<void> => {
  await asManager.put(`/api/craft/${id}`).set('If-Match', `"${version}"`).send(body).expect(200);
};

interface Line {
  readonly id: string;
  readonly unitName: string;
}
const craftCalled = async (name: string): Promise<string> => {
  const { items } = (await asManager.get('/api/craft').expect(200)).body as { items: Line[] };
  return items.find(({ unitName }) => unitName === name)?.id ?? '';
};

describe('the fleet', () => {
  it('is found as it is typed, by whoever works here, and stays readable without signal', async () => {
    const page = await desk.visit('staff', '/fleet');
    const faults = listenForFaults(page);
    const lines = page.getByRole('main').getByRole('listitem');
    await page.getByText('2 craft, all in service.').waitFor();
    await page.getByLabel('Search the fleet').fill('blue pont');
    expect(await lines.allInnerTexts()).toEqual([
      expect.stringMatching(/^Pontoon 2\s+In service\s+Pontoon boat · blue/),
    ]);
    await page.getByLabel('Search the fleet').fill('kayak');
    await page.getByText('No craft is like that.').waitFor();
    await page.getByLabel('Search the fleet').fill('');
    await choose(page, 'Out of service');
    await page.getByText('No craft is like that.').waitFor();
    await choose(page, 'All');
    expect(await page.getByRole('link', { name: 'Add a craft' }).count()).toBe(0);
    await expectReach(page);
    await lines.getByRole('link', { name: /^PWC 7/ }).click();
    await page.getByText('Nothing keeps it in. It may go out.').waitFor();
    await page.route('**/api/**', (route) => route.abort());
    await open(page, 'Add a note');
    await choose(page, 'An earlier trip');
    await page.getByLabel('Note *').fill('Came back pulling to the left.');
    await fold(page, 'Add a note').getByRole('button', { name: 'Add a note' }).click();
    await press(page, 'Keep it here and send it later');
    await page.getByText('Saved on this device, not yet sent.').waitFor();
    await expectReach(page);
    await page.goto(`${desk.url}/fleet`);
    await page.getByText('No signal. This is what this device kept at').waitFor();
    await expectReach(page);
    await page.unroute('**/api/**');
    await page.evaluate("dispatchEvent(new Event('online'))");
    const notes = async () =>
      (await asManager.get(`/api/craft/${await craftCalled('PWC 7')}/notes`)).body as object;
    await expect
      .poll(notes)
      .toMatchObject({ items: [{ about: 'prior-trip', text: 'Came back pulling to the left.' }] });
    expect(faults).toEqual([]);
    await page.context().close();
    const owner = await desk.visit('administrator', '/fleet');
    await owner.getByText('The owner has named no amount').waitFor();
    await open(owner, 'Name another amount');
    await owner.getByLabel('Amount *').fill('five hundred');
    await press(owner, 'Name another amount');
    await owner.getByText('Amount: Give an amount in US dollars').waitFor();
    await owner.getByLabel('Amount *').fill('500');
    await press(owner, 'Name another amount');
    await owner.getByText('and below $500, the day').waitFor();
    await owner.context().close();
    const denied = await desk.visit('staff', '/fleet/add');
    await denied.getByRole('heading', { name: 'Not yours to see' }).waitFor();
    await denied.context().close();
  });

  it('says so while it is empty, and when the service fails', async () => {
    const page = await desk.visit('staff', '/law/try');
    await page.route('**/api/craft?**', (route) => route.fulfill({ json: { items: [], next: null } }));
    await page.goto(`${desk.url}/fleet`);
    await page.getByText('No craft has been entered yet.').waitFor();
    await expectReach(page);
    await page.unroute('**/api/craft?**');
    const fault = { type: 'about:blank', title: 'The service failed', status: 500, errors: [] };
    await page.route('**/api/craft?**', (route) => route.fulfill({ status: 500, json: fault }));
    await page.reload();
    await page.getByRole('alert').waitFor();
    await page.unroute('**/api/craft?**');
    await press(page, 'Try again');
    await page.getByText('2 craft').waitFor();
    await page.context().close();
  });
});

describe('a craft', () => {
  it('is added, changed, put back, and told as it was on a day', async () => {
    const page = await desk.visit(manager, '/fleet');
    await page.getByRole('link', { name: 'Add a craft' }).click();
    await press(page, 'Add it to the fleet');
    await page.getByText('Look at the marked fields').waitFor();
    expect(await page.getByLabel('Name at the dock *').getAttribute('aria-invalid')).toBe('true');
    await page.getByLabel('Name at the dock *').fill('PWC 9');
    await page.getByLabel('Type *').selectOption({ label: 'Personal watercraft' });
    await page.getByLabel('Colours').fill('yellow, black');
    await page.getByLabel('Hull identification number').fill('ABC12345D404');
    await page.getByLabel('Length').fill('ten');
    await press(page, 'Add it to the fleet');
    await page.getByText('Length: Must be a length in feet').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'fleet-add');
    await page.getByLabel('Length').fill('10.5');
    await press(page, 'Add it to the fleet');
    await page.getByRole('heading', { name: 'PWC 9' }).waitFor();
    await section(page, 'What it is').getByText('10.5 ft').waitFor();
    await page.getByText('ABC is the code of the manufacturer').waitFor();

    await open(page, 'Change what is entered');
    await page.getByLabel('Colours').fill('green');
    await press(page, 'Keep the change');
    await page.getByText('Kept as changed.').waitFor();
    await section(page, 'What it is').getByText('green', { exact: true }).waitFor();
    await press(page, 'Undo');
    await page.getByText('Put back as it was before.').waitFor();
    await section(page, 'As it was').getByText('Colours: from yellow, black to green').waitFor();
    await section(page, 'As it was').getByLabel('As it was on').fill('2026-01-02');
    await page.getByText('It was not entered yet on 2 January 2026.').waitFor();
    const today = await page.evaluate<string>("new Date().toLocaleDateString('sv-SE')");
    await section(page, 'As it was').getByLabel('As it was on').fill(today);
    await page
      .getByRole('group', { name: /^As it was on/ })
      .getByText('yellow, black')
      .waitFor();
    await expectReach(page);
    await page.context().close();
  });

  it('that somebody else changed meanwhile shows both, and keeps what the person chose', async () => {
    const made = await create(asManager, '/api/craft', { unitName: 'PWC 11', type: 'personal-watercraft' });
    const { id } = made.body as Line;
    const page = await desk.visit(manager, `/fleet/${id}`, { viewport: WIDE });
    await open(page, 'Change what is entered');
    await page.getByLabel('Make', { exact: true }).fill('Heron');
    await change(id, 1, { unitName: 'PWC 11', type: 'personal-watercraft', make: 'Egret' });
    await press(page, 'Keep the change');
    const row = page.getByRole('row', { name: /^Make/ });
    await row.waitFor();
    expect(await row.getByRole('cell').allInnerTexts()).toEqual(['Heron', 'Egret']);
    await expectReach(page);
    await press(page, 'Put mine in place of theirs');
    await section(page, 'What it is').getByText('Heron', { exact: true }).waitFor();
    await page.context().close();
  });

  it('goes out for upkeep and comes back, each step in its log', async () => {
    const id = await craftCalled('Pontoon 2');
    const page = await desk.visit(manager, `/fleet/${id}`);
    await open(page, 'Take it out for upkeep');
    await page.getByLabel('Why *').fill('Loose seat');
    await fold(page, 'Take it out for upkeep').getByRole('button').click();
    const hold = page.getByRole('article', { name: 'Loose seat' });
    await hold.getByText('You may release it.').waitFor();
    await page.goto(`${desk.url}/fleet`);
    await page.getByRole('link', { name: /Pontoon 2\s+Out of service.*Out for upkeep: Loose seat/ }).click();
    await hold.locator('summary').filter({ hasText: 'Release it' }).click();
    await hold.getByRole('button', { name: 'Release it' }).click();
    const dialog = page.getByRole('dialog', { name: 'Release Pontoon 2?' });
    await expectReach(page);
    await dialog.getByRole('button', { name: 'Release it' }).click();
    await page.getByText('Nothing keeps it in. It may go out.').waitFor();
    expect(await section(page, 'Log of its service').getByRole('listitem').allInnerTexts()).toEqual([
      expect.stringContaining('Released'),
      expect.stringMatching(/Taken out\s+Loose seat/),
    ]);
    await page.context().close();
  });

  it('that an incident holds says what its release takes, and refuses without it', async () => {
    const id = await craftCalled('PWC 7');
    const one = await IncidentCase.open(asManager, { craftNamed: ['PWC 7'], said: 'They hit the bottom.' });
    await one.write('craft', { craft: [craftOf('c1', { fleetCraft: id, name: 'PWC 7' })] });
    const page = await desk.visit(manager, `/fleet/${id}`);
    await page.getByText('photographs of it as it is').waitFor();
    await page.getByText('Record the clearance of counsel or the insurer first.').first().waitFor();
    await page.locator('summary').filter({ hasText: 'Record a clearance' }).click();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'craft');
    await choose(page, 'Insurer');
    await page.getByLabel('Who gave it *').fill('R. Vale');
    await page.getByLabel('How it was given *').fill('By mail of 3 July');
    await press(page, 'Record a clearance');
    await page.getByText('Cleared by R. Vale (Insurer), By mail of 3 July').first().waitFor();
    await page.locator('summary').filter({ hasText: 'Release it' }).click();
    await press(page, 'Release it');
    await page.getByRole('dialog').getByRole('button', { name: 'Release it' }).click();
    await page.getByRole('alert').getByText('Photograph the craft as it is').waitFor();
    await fold(page, 'Release it').getByLabel('Photographs').fill('bow.jpg, stern.jpg');
    await press(page, 'Release it');
    await page.getByRole('dialog').getByRole('button', { name: 'Release it' }).click();
    await page.getByText('Nothing keeps it in. It may go out.').waitFor();
    await page.goto(`${desk.url}/fleet`);
    await page.getByText('all in service').waitFor();
    await takePictures(page, 'fleet');
    await page.context().close();
  });

  it('is read in Spanish', async () => {
    const id = await craftCalled('PWC 7');
    const page = await desk.visit('staff', `/fleet/${id}`, { context: { locale: 'es-MX' } });
    await page.getByText('Nada la retiene. Puede salir.').waitFor();
    await page.getByText('Moto acuática').first().waitFor();
    await section(page, 'Registro de su servicio').getByText('Salida permitida').waitFor();
    await expectReach(page);
    await page.context().close();
  });
});
