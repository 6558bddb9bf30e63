import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Browser, create, PASSWORD, type Person } from '../accounts/house.js';
import { openIncident, peopleOf, STITCHED, taskOf, tasksOf, write } from '../follow-up/desk.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures, WIDE } from './desk.js';
import { stockFleet } from './small-fleet.js';

let desk: BrowserDesk;
let ana: Person;
let sam: Person;
let manager: Browser;
let incident: { id: string; reference: string };

beforeAll(async () => {
  desk = await BrowserDesk.open();
  await stockFleet(desk.house);
  ana = await desk.house.person('manager');
  sam = await desk.house.person('staff');
  manager = await desk.house.signedIn(ana);
  incident = await openIncident(manager, desk.house.now());
  await write(manager, incident.id, 'people', peopleOf(STITCHED));
});
afterAll(() => desk.close());

const task = (page: Page, title: string) => page.locator('details.task').filter({ hasText: title });

describe('today', () => {
  const empty = { items: [], next: null };

  it('begins with the clock that ends first, and every line leads to where it is handled', async () => {
    const page = await desk.visit(ana, '/', { viewport: WIDE });
    const said = listenForFaults(page);
    // 48 hours after it happened an hour ago (33 CFR 173.55(a)).
    const first = page.locator('.deadline.first');
    await first.getByText(/^1 day 2[23] h left$/).waitFor();
    expect(await first.getByRole('link').getAttribute('href')).toBe(`/incidents/${incident.id}/duties`);
    await page.getByRole('link', { name: /Required: Accident report, Texas/ }).waitFor();
    await page.getByText('No copy of this desk was ever made and checked.').waitFor();
    await page.getByText('Held: PWC 7').waitFor();
    expect(await page.getByRole('heading', { name: 'Mail' }).count()).toBe(0);
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'today');
    await page.getByRole('link', { name: new RegExp(`^${incident.reference}, PWC 7`) }).click();
    await page
      .getByRole('heading', { name: new RegExp(incident.reference) })
      .first()
      .waitFor();
    expect(said).toEqual([]);
    await page.context().close();
  });

  it('stands without signal as it was kept, and says of a part that fails that it does', async () => {
    const page = await desk.visit(sam, '/');
    await page.getByText('Held: PWC 7').waitFor();
    await page.getByText('Nobody is on the roster for today.').waitFor();
    await page.getByRole('link', { name: /Keep PWC 7 as it is/ }).waitFor();
    await page.route('**/api/**', (route) => route.abort());
    await page.reload();
    await page.getByText('Held: PWC 7').waitFor();
    expect(await page.getByText(/^No signal. This is what this device kept/).count()).toBeGreaterThan(3);
    await expectReach(page);
    await page.unroute('**/api/**');
    const fault = { type: 'about:blank', title: 'The service failed', status: 500, errors: [] };
    await page.route('**/api/roster?*', (route) => route.fulfill({ status: 500, json: fault }));
    await page.reload();
    await page.getByRole('alert').getByText('The service failed. Try again.').waitFor();
    await page.getByText('Held: PWC 7').waitFor();
    await page.context().close();
  });

  it('says of an empty desk that nothing runs', async () => {
    const page = await desk.visit('administrator', '/law/try');
    for (const path of ['clocks', 'register', 'tasks', 'outings', 'mail'])
      await page.route(`**/api/${path}?*`, (route) => route.fulfill({ json: empty }));
    await page.route('**/api/outings', (route) => route.fulfill({ json: empty }));
    await page.goto(`${desk.url}/`);
    for (const words of ['No clock runs', 'No incident is open.', 'The fleet has no craft yet.'])
      await page.getByText(words).waitFor();
    await page.getByText('Nothing is due within 24 hours.').waitFor();
    await page.getByText('All mail went out.').waitFor();
    await expectReach(page);
    await page.context().close();
  });

  it('gives a device what it may do, counsel what was assigned, and speaks Spanish', async () => {
    const device = await desk.visitOnDevice('/');
    for (const words of ['Out and back', 'What to say', 'Only on this device', 'Sign in to read the records'])
      await device.getByRole('link', { name: words }).last().waitFor();
    await expectReach(device);
    await device.context().close();
    const counsel = await desk.house.person('counsel');
    const lawyer = await desk.visit(counsel, '/');
    await lawyer.getByText('No incident is assigned to you yet.').waitFor();
    await lawyer.context().close();
    const spanish = await desk.visit(sam, '/', { context: { locale: 'es-US' } });
    await spanish.getByRole('heading', { name: 'En el agua' }).waitFor();
    await spanish
      .getByText(/^quedan 1 día 2[123] h/)
      .first()
      .waitFor();
    await expectReach(spanish);
    await spanish.context().close();
  });
});

describe('the follow-up of all incidents', () => {
  it('is read in three ways, which the address carries and the device remembers', async () => {
    const page = await desk.visit(sam, '/follow-up');
    const said = listenForFaults(page);
    await page.getByRole('heading', { name: 'Within 24 hours' }).waitFor();
    await page.getByRole('radio', { name: 'Person', exact: true }).check();
    await page.getByRole('heading', { name: 'Nobody has it yet: for the shift lead' }).waitFor();
    await page.getByRole('radio', { name: 'Mine' }).check();
    await page.getByText('Nothing is yours.').waitFor();
    expect(page.url()).toContain('by=person&show=mine');
    await expectReach(page);
    await page.goto(`${desk.url}/follow-up`);
    await page.getByText('Nothing is yours.').waitFor();
    await page.getByRole('button', { name: 'Show all' }).click();
    await page.getByRole('radio', { name: 'Incident', exact: true }).check();
    await page
      .getByRole('link', { name: `Follow-up of ${incident.reference}` })
      .first()
      .waitFor();
    expect(said).toEqual([]);
    await page.context().close();
  });

  it('takes, acknowledges, reaches and completes a task, and takes it back', async () => {
    const page = await desk.visit(sam, '/follow-up?by=incident&show=all');
    const call = task(page, 'Call counsel');
    await call.locator('summary').first().click();
    await call.getByRole('button', { name: 'I take it' }).click();
    await call.getByText('You have it').waitFor();
    await call.getByText('Somebody was reached', { exact: true }).click();
    expect(await call.getByRole('link', { name: /Emergency services/ }).getAttribute('href')).toBe('tel:911');
    await call.getByRole('button', { name: 'Write it down' }).click();
    await call.getByText('Write whom you reached.').waitFor();
    await call.getByLabel('Whom you reached').fill('R. Vale');
    await call.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('Written down: reached R. Vale').waitFor();
    await call.getByText('What happened to it').click();
    await call.getByText(/^Reached R\. Vale, at /).waitFor();
    expect(await smallTargets(page)).toEqual([]);
    await call.getByText('It is done', { exact: true }).click();
    await expectReach(page);
    await call.getByRole('button', { name: 'Done', exact: true }).click();
    await call.getByText('Write what shows that it is done.').waitFor();
    await call.getByLabel('What was done, when, by whom').fill('Told R. Vale at 15:10.');
    await call.getByRole('button', { name: 'Done', exact: true }).click();
    await page.getByText('Done: Call counsel').waitFor();
    expect((await taskOf(manager, incident.id, 'counsel-told')).state).toBe('done');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Open again: Call counsel').waitFor();
    expect((await taskOf(manager, incident.id, 'counsel-told')).state).toBe('open');
    await page.context().close();
  });

  it('keeps what is done without signal on the device, and sends it when the signal is back', async () => {
    const page = await desk.visit(sam, '/follow-up?by=time&show=all');
    await page.getByRole('heading', { name: 'Within 24 hours' }).waitFor();
    await page.route('**/api/**', (route) => route.abort());
    const photographs = task(page, 'Photograph the craft');
    await photographs.locator('summary').first().click();
    await photographs.getByText('It is done', { exact: true }).click();
    await photographs.getByLabel('What was done, when, by whom').fill('Twelve pictures.');
    await photographs.getByRole('button', { name: 'Done', exact: true }).click();
    await page.getByText('Saved on this device, not yet sent').first().waitFor();
    await page.reload();
    await page.getByText(/No signal. This is what this device kept/).waitFor();
    await photographs.waitFor();
    await page.unroute('**/api/**');
    await page.evaluate("dispatchEvent(new Event('online'))");
    await expect.poll(async () => (await taskOf(manager, incident.id, 'photographs')).state).toBe('done');
    await page.context().close();
  });

  it('makes a calendar address once, and stops it', async () => {
    const page = await desk.visit(ana, '/follow-up', { viewport: WIDE });
    await page.getByText('Your tasks in the calendar of your phone').click();
    await page.getByRole('button', { name: 'Make an address' }).click();
    const address = await page.getByLabel('Secret address').inputValue();
    expect((await fetch(address)).status).toBe(200);
    await page.getByRole('button', { name: 'Stop the address' }).click();
    await page.getByText('The address has stopped.').waitFor();
    expect((await fetch(address)).status).toBe(404);
    await expectReach(page);
    await takePictures(page, 'follow-up');
    await page.context().close();
  });
});

describe('the follow-up of one incident', () => {
  it('shows calls and clocks, takes a task of one’s own, and is closed and opened again with a reason', async () => {
    const page = await desk.visit(ana, `/incidents/${incident.id}/follow-up`);
    const said = listenForFaults(page);
    await page.getByRole('heading', { name: 'Whom to call' }).waitFor();
    await page.getByRole('article', { name: 'Suit for injury or death from a maritime tort' }).waitFor();
    await page.getByText('No written house rules were in force').waitFor();
    await page.getByText('Add a task of your own').click();
    await page.getByRole('button', { name: 'Add the task' }).click();
    await page.getByText('Say what it is.').waitFor();
    await page.getByLabel('What is to be done').fill('Ask the marina for its camera');
    await page.getByLabel('Due', { exact: true }).fill('2027-01-04T12:00');
    await page.getByRole('button', { name: 'Add the task' }).click();
    await page.getByText('Added. It stands among the others.').waitFor();
    await task(page, 'Ask the marina').waitFor();
    await task(page, 'Ask the marina').locator('summary').first().click();
    await task(page, 'Ask the marina').getByText('Give it to somebody').click();
    await page.getByLabel('Who is to do it').selectOption({ label: sam.name });
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText(`${sam.name} has it`).first().waitFor();
    await page
      .getByText(/things speak against closing it now/)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Close it although this is unfinished' }).click();
    await page.getByText('Say that you have read what is unfinished.').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'follow-up-incident');
    await page.getByRole('checkbox', { name: 'I have read what is unfinished' }).check();
    await page.getByLabel('Why it is closed').fill('Goes on in the office.');
    await page.getByRole('button', { name: 'Close it although this is unfinished' }).click();
    await page.getByText('This incident is closed.').waitFor();
    await page.getByLabel('Why it is opened again').fill('It was the wrong one.');
    await page.getByRole('button', { name: 'Open it again' }).click();
    await page.getByRole('button', { name: 'Close it although this is unfinished' }).waitFor();
    expect(said).toEqual([]);
    await page.context().close();
  });

  it('is read and not changed by counsel, and says so when the service fails', async () => {
    const counsel = await desk.house.person('counsel');
    await create(manager, `/api/incidents/${incident.id}/counsel`, { account: counsel.id }).expect(200);
    const page = await desk.visit(counsel, `/incidents/${incident.id}/follow-up`);
    const one = task(page, 'Freeze the records');
    await one.locator('summary').first().click();
    await one.getByText('What shows that it is done').waitFor();
    expect(await one.getByRole('button').count()).toBe(0);
    await page.getByText('A manager closes an incident.').waitFor();
    const fault = { type: 'about:blank', title: 'It is not there', status: 404, errors: [] };
    await page.route('**/api/**/tasks', (route) => route.fulfill({ status: 404, json: fault }));
    await page.reload();
    await page.getByRole('alert').first().waitFor();
    await expectReach(page);
    await page.unroute('**/api/**/tasks');
    await page.getByRole('button', { name: 'Try again' }).click();
    await one.waitFor();
    expect((await tasksOf(manager, incident.id)).length).toBeGreaterThan(5);
    await page.context().close();
  });
});

describe('the shift hand-over', () => {
  it('is gathered, signed by two different people on one device, and listed', async () => {
    const page = await desk.visit(ana, '/shift-hand-over');
    const said = listenForFaults(page);
    await page.getByText('No shift was handed over yet.').waitFor();
    await expectReach(page);
    await page.getByLabel('What the next shift should know').fill('Wind goes to the south at six.');
    await page.getByRole('button', { name: 'Gather what is open' }).click();
    await page.getByText('Wind goes to the south at six.').waitFor();
    await page.getByRole('link', { name: /^PWC 7/ }).waitFor();
    await page.getByText('No craft is looked for.').waitFor();
    expect(
      await page.getByRole('link', { name: new RegExp(`^${incident.reference}`) }).getAttribute('href'),
    ).toBe(`/incidents/${incident.id}`);
    await page.getByRole('button', { name: `Sign as the outgoing shift: ${ana.name}` }).click();
    await page.getByText('Signed.', { exact: true }).waitFor();
    await page.getByText('Sign in here as somebody else').click();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await page.getByLabel('Sign-in name').fill(sam.signInName);
    await page.getByLabel('Password').fill(PASSWORD);
    await page.getByRole('button', { name: 'Sign in', exact: true }).click();
    await page.getByRole('button', { name: `Sign as the incoming shift: ${sam.name}` }).click();
    await page.getByText('Both shifts have signed.').waitFor();
    await takePictures(page, 'shift-hand-over');
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByText(/^Printed .+ by /).isVisible()).toBe(true);
    await page.emulateMedia({ media: null });
    await page.getByRole('link', { name: 'To all hand-overs' }).click();
    await page.getByText(`signed by ${ana.name} and ${sam.name}`).waitFor();
    await page.route('**/api/**', (route) => route.abort());
    await page.reload();
    await page.getByText(/^No signal. This is what this device kept/).waitFor();
    await page.getByRole('button', { name: 'Gather what is open' }).click();
    await page.getByText('The service could not be reached.').first().waitFor();
    expect(said).toEqual([]);
    await page.context().close();
  });
});
