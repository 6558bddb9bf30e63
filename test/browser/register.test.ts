import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { create, type Person } from '../accounts/house.js';
import { IncidentCase, operatorOf, peopleWith, told } from '../decision/incident-case.js';
import {
  BrowserDesk,
  expectReach,
  listenForFaults,
  PHONE,
  smallTargets,
  takePictures,
  WIDE,
} from './desk.js';
import { stockFleet } from './small-fleet.js';

let desk: BrowserDesk;
let manager: Person;
let hurt: IncidentCase;

beforeAll(async () => {
  desk = await BrowserDesk.open();
  await stockFleet(desk.house);
  manager = await desk.house.person('manager');
  const browser = await desk.house.signedIn(manager);
  const placed = async (one: IncidentCase, latitude: number, longitude: number, where: string) =>
    one.write('time-and-place', {
      occurred: told({ at: desk.house.now(), precision: 'to-the-minute' }),
      states: told(['TX']),
      description: told(where),
      position: told({ latitude, longitude }),
    });
  const grounding = await IncidentCase.quietGrounding(browser, desk.house.now());
  await placed(grounding, 33.822, -96.58, 'off the north dock');
  hurt = await IncidentCase.open(browser, { said: 'Thrown off at the sandbar', kind: 'now' });
  await placed(hurt, 33.8305, -96.5702, 'north of the sandbar');
  await hurt.write('craft', { craft: [{ id: 'A', name: 'PWC 7', ours: true, use: told('rental') }] });
  await hurt.write(
    'people',
    peopleWith([operatorOf('A', { outcome: told('injured'), care: told('beyond-first-aid') })]),
  );
  await IncidentCase.open(browser, { said: 'Help, Pontoon 2', craftNamed: ['Pontoon 2'], kind: 'late' });
});
afterAll(() => desk.close());

const visit = async (who: Parameters<BrowserDesk['visit']>[0], path = '/register', viewport = PHONE) => {
  const page = await desk.visit(who, path, { viewport });
  await page.getByRole('heading', { name: 'Register', level: 1 }).waitFor();
  return page;
};
const found = (page: Page, words: string): Promise<void> => page.getByText(words, { exact: true }).waitFor();
const lines = (page: Page): Promise<string[]> => page.locator('.register-link strong').allInnerTexts();

describe('the register', () => {
  it('is searched while somebody types, and its address can be sent on', async () => {
    const page = await visit('staff');
    const faults = listenForFaults(page);
    await found(page, '3 incidents');
    expect(await lines(page)).toEqual(['“Help, Pontoon 2”', '“Thrown off at the sandbar”', 'Grounding']);
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'register');
    await page.getByLabel('Search the records').pressSequentially('sandb');
    await found(page, '1 of 3 incidents');
    expect(page.url()).toContain('/register?q=sandb');
    await page.reload();
    await found(page, '1 of 3 incidents');
    expect(await lines(page)).toEqual(['“Thrown off at the sandbar”']);
    await page.getByLabel('Search the records').fill('nobody wrote this');
    await page.getByText('No incident fits.').waitFor();
    await expectReach(page);
    await page.getByRole('link', { name: 'Show all incidents' }).click();
    await found(page, '3 incidents');
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('shows no answer that came late for another search', async () => {
    const page = await visit('staff');
    await found(page, '3 incidents');
    let letGo = (): void => undefined;
    const held = new Promise<void>((resolve) => {
      letGo = resolve;
    });
    await page.route('**/api/register?q=pontoon', async (route) => {
      await held;
      await route.continue().catch(() => undefined);
    });
    const slow = page.waitForRequest('**/api/register?q=pontoon');
    await page.getByLabel('Search the records').fill('pontoon');
    await slow;
    await page.getByText('Searching…').waitFor();
    await page.getByLabel('Search the records').fill('sandbar');
    await found(page, '1 of 3 incidents');
    letGo();
    await page.getByRole('link', { name: 'sandbar' }).waitFor();
    expect(await lines(page)).toEqual(['“Thrown off at the sandbar”']);
    await page.context().close();
  });

  it('is narrowed and put in order at a desk, saved as a view, and a view is taken back', async () => {
    const page = await visit(manager, '/register', WIDE);
    await found(page, '3 incidents');
    await page.getByText('Narrow the list', { exact: true }).click();
    await page.getByLabel('Anyone hurt?').selectOption({ label: 'Somebody was' });
    await page.getByLabel('Craft').selectOption('PWC 7');
    await found(page, '1 of 3 incidents');
    // No craft of this fleet belongs to it.
    await page.getByLabel('Station').selectOption('North dock');
    await page.getByText('Narrow the list: Anyone hurt? Somebody was · PWC 7 · North dock').waitFor();
    await found(page, '0 of 3 incidents');
    await page.getByLabel('Station').selectOption('');
    await found(page, '1 of 3 incidents');
    const row = page.getByRole('row', { name: 'Thrown off' });
    expect(await row.getByRole('cell').allInnerTexts()).toEqual([
      expect.stringContaining('PWC 7 · Injured'),
      'north of the sandbar',
      expect.stringMatching(/\d\d:\d\d$/),
      expect.stringContaining('left'),
      expect.stringContaining('Required'),
      expect.stringMatching(/^\d+ open/),
      'Open',
    ]);
    await expectReach(page);
    await page.getByRole('button', { name: 'Save what is shown as a view' }).click();
    await page.getByText('Give it a name first.').waitFor();
    await page.getByLabel('Name of this view').fill('Hurt on PWC 7');
    await page.keyboard.press('Enter');
    await page.getByText('Saved as Hurt on PWC 7.').waitFor();
    await page.goto(`${desk.url}/register?order=due`);
    await found(page, '3 incidents');
    await page.getByRole('button', { name: 'Hurt on PWC 7', exact: true }).click();
    await found(page, '1 of 3 incidents');
    await takePictures(page, 'register-narrowed');
    await page.getByRole('button', { name: 'Remove the view Hurt on PWC 7' }).click();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Hurt on PWC 7', exact: true }).waitFor();
    await page.context().close();
  });

  it('turns pages forth and back', async () => {
    const page = await desk.visit(manager, '/');
    await page.route('**/api/register*', (route) => {
      const url = new URL(route.request().url());
      url.searchParams.set('limit', '2');
      return route.continue({ url: url.toString() });
    });
    await page.goto(`${desk.url}/register`);
    await page.getByRole('button', { name: 'Next page' }).click();
    await page.getByRole('link', { name: 'Grounding' }).waitFor();
    expect(await page.locator('.register-link').count()).toBe(1);
    await page.getByRole('button', { name: 'Page before' }).click();
    await page.getByText('Pontoon 2”').waitFor();
    await page.context().close();
  });

  it('shows where they happened on a map that asks no other host, by pin and by list', async () => {
    const page = await desk.visit(manager, '/', { viewport: WIDE });
    const faults = listenForFaults(page);
    const hosts = new Set<string>();
    page.on('request', (request) => hosts.add(new URL(request.url()).origin));
    const lineData = page.waitForResponse('**/data/state-lines.bin');
    await page.goto(`${desk.url}/register`);
    await page.getByRole('button', { name: 'Show the map' }).click();
    await lineData;
    const map = page.getByRole('region', { name: 'Map of these incidents' });
    await map.locator('.state-line').waitFor({ state: 'attached' });
    await map.getByText('Heron Cove').waitFor();
    await page.getByText('1 incident of this page has no position.').waitFor();
    await map.getByRole('button', { name: /^2: / }).focus();
    await page.keyboard.press('Enter');
    await page.getByText('On the map: 2026-0001').waitFor();
    expect(await page.getByRole('button', { name: '1 Show' }).getAttribute('aria-pressed')).toBe('false');
    await page.getByRole('button', { name: '1 Show' }).click();
    await page.getByText('On the map: 2026-0002').waitFor();
    await expect
      .poll(() => map.getByRole('button', { name: /^1: / }).getAttribute('aria-pressed'))
      .toBe('true');
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'register-map');
    expect([...hosts]).toEqual([desk.url]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('becomes a file of what is shown, which a manager saves', async () => {
    const page = await visit(manager, '/register?q=sandbar');
    await found(page, '1 of 3 incidents');
    await page.getByRole('button', { name: 'Make a table (.csv)' }).click();
    const link = page.getByRole('link', { name: 'Save the file' });
    await link.waitFor();
    await expectReach(page);
    const [download] = await Promise.all([page.waitForEvent('download'), link.click()]);
    const text = readFileSync(await download.path(), 'utf8');
    expect(text.trim().split('\r\n')).toHaveLength(2);
    expect(text).toContain('north of the sandbar');
    await page.context().close();
    const staff = await visit('staff');
    await found(staff, '3 incidents');
    expect(await staff.getByRole('button', { name: 'Make a table (.csv)' }).count()).toBe(0);
    await staff.context().close();
  });

  it('gives counsel what was assigned, and sends strangers to sign in', async () => {
    const counsel = await desk.house.person('counsel');
    const none = await visit(counsel);
    await none.getByText('No incident was assigned to you.').waitFor();
    await expectReach(none);
    await none.context().close();
    const asManager = await desk.house.signedIn(manager);
    await create(asManager, `/api/incidents/${hurt.id}/counsel`, { account: counsel.id }).expect(200);
    const page = await visit(counsel);
    await page.getByText('Thrown off at the sandbar').waitFor();
    expect(await page.locator('.register-link').count()).toBe(1);
    await found(page, '1 incident');
    const line = page.getByRole('listitem').filter({ hasText: 'Thrown off at the sandbar' });
    await line.getByText('Required').waitFor();
    await line.getByText(/left/).waitFor();
    await page.getByText('Narrow the list', { exact: true }).click();
    expect(await page.getByLabel('Craft').count()).toBe(0);
    await expectReach(page);
    await page.context().close();
    const stranger = await desk.visit(null, '/register');
    await stranger.getByRole('heading', { name: 'Sign in' }).waitFor();
    await stranger.context().close();
  });

  it('says so when the service fails, and shows what the device kept when there is no signal', async () => {
    const page = await visit(manager);
    await found(page, '3 incidents');
    const fault = { type: 'about:blank', title: 'The service failed', status: 500, errors: [] };
    await page.route('**/api/register?*', (route) => route.fulfill({ status: 500, json: fault }));
    await page.getByLabel('Search the records').fill('dam');
    await page.getByRole('alert').waitFor();
    await expectReach(page);
    await page.unroute('**/api/register?*');
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.getByText('No incident fits.').waitFor();
    await page.route('**/api/register**', (route) => route.abort());
    await page.goto(`${desk.url}/register`);
    await page.getByText('No signal. This is what this device kept').waitFor();
    expect(await lines(page)).toHaveLength(3);
    await page.getByLabel('Search the records').fill('cove');
    await page.getByText('Searching needs signal.').waitFor();
    await page.context().close();
  });
});
