import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Browser, create } from '../accounts/house.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';
import { craft, inHours, press, standingOf, stock } from './outing-desk.js';

let desk: BrowserDesk;
let staff: Browser;
beforeAll(async () => {
  desk = await BrowserDesk.open();
  staff = await desk.house.signedIn('manager');
});
afterAll(() => desk.close());

const standing = (unit: string) => standingOf(staff, unit);

describe('out and back', () => {
  it('says what will stand there while the fleet is empty, and when the service fails', async () => {
    const page = await desk.visit('staff', '/out-and-back');
    await page.getByText('No craft is in the fleet yet.').waitFor();
    await expectReach(page);
    const fault = { type: 'about:blank', title: 'The service failed', status: 500, errors: [] };
    await page.route('**/api/outings', (route) => route.fulfill({ status: 500, json: fault }));
    await page.reload();
    await page.getByRole('alert').waitFor();
    await expectReach(page);
    await page.unroute('**/api/outings');
    await stock(staff);
    await press(page, 'Try again');
    await page.getByRole('heading', { name: 'Late' }).waitFor();
    await page.context().close();
    const counsel = await desk.visit('counsel', '/out-and-back');
    await counsel.getByRole('heading', { name: 'Not yours to see' }).waitFor();
    await counsel.context().close();
  });

  it('shows who is late with the time as the figure, and takes one press for back, with the way back', async () => {
    const page = await desk.visit('staff', '/out-and-back');
    const faults = listenForFaults(page);
    await craft(page, 'PWC 7')
      .getByText(/^overdue by 4[56] min/)
      .waitFor();
    await craft(page, 'PWC 8')
      .getByText(/^(28|29|30) min left/)
      .waitFor();
    expect(
      await craft(page, 'PWC 7').getByRole('link', { name: 'Call 580-555-0142' }).getAttribute('href'),
    ).toBe('tel:580-555-0142');
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'out-and-back');
    await press(page, 'PWC 8 is back');
    await page
      .getByRole('status')
      .filter({ hasText: /^PWC 8 back \d\d:\d\d/ })
      .waitFor();
    await expect.poll(() => standing('PWC 8')).toBe('in');
    await expectReach(page);
    await press(page, /^Undo$/);
    await expect.poll(() => standing('PWC 8')).toBe('out');
    await craft(page, 'PWC 8')
      .getByText(/^(28|29|30) min left/)
      .waitFor();
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('writes down one that went out, corrects it, and names what is wrong with a list by row and column', async () => {
    const page = await desk.visit('staff', '/out-and-back');
    await press(page, 'One went out');
    const form = page.getByRole('dialog');
    await form.getByRole('button', { name: 'Write it down' }).click();
    await form.getByText('Say which craft.').waitFor();
    await form.getByText('Choose when it is due').waitFor();
    await expectReach(page);
    await form.getByLabel('Which craft').fill('PWC 77');
    await form.getByRole('radio', { name: 'in 2 h' }).check();
    await form.getByRole('button', { name: 'Write it down' }).click();
    await form.getByText('No craft of the fleet has this name').first().waitFor();
    await form.getByLabel('Which craft').fill('PWC 9');
    await form.getByLabel('Renter', { exact: true }).fill('Kim Ortega');
    await form.getByText('More that a search would need').click();
    await form.getByLabel('Others aboard').fill('Sam Ortega, 580-555-0177');
    await takePictures(page, 'out-and-back-form');
    await form.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('PWC 9 is written down.').waitFor();
    await craft(page, 'PWC 9')
      .getByText(/^1 h 59 min left|^2 h 0 min left/)
      .waitFor();
    await press(page, 'Change what is written of PWC 9');
    await form.getByLabel('How many are aboard').fill('2');
    await form.getByRole('button', { name: 'Save the change' }).click();
    await craft(page, 'PWC 9').getByText('Kim Ortega · 2 aboard').waitFor();

    await page.getByText('Take over a list (CSV)').click();
    await page.getByLabel('Or paste it here').fill('Unit,Due back\nPWC 10,soon\nPWC 10\n');
    await press(page, 'Take it over');
    const row = page.getByRole('row').filter({ hasText: 'due back' });
    await row.filter({ hasText: 'Write it as 2026-06-13 14:30' }).waitFor();
    expect(await row.first().getByRole('cell').allInnerTexts()).toEqual([
      '2',
      'due back',
      expect.any(String),
    ]);
    await expectReach(page);
    await takePictures(page, 'out-and-back-list');
    const csv = `Unit,Due back,Shoe size\nPWC 10,${inHours(1)},9\n`;
    await page
      .getByLabel('File')
      .setInputFiles({ name: 'list.csv', mimeType: 'text/csv', buffer: Buffer.from(csv) });
    await press(page, 'Take it over');
    await page.getByText('1 craft was taken over').waitFor();
    await page.getByText('left out: Shoe size').waitFor();
    expect(await standing('PWC 10')).toBe('out');
    await page.context().close();
  });

  it('without signal keeps back, and what went out, on this phone, and sends both once', async () => {
    const page = await desk.visit('staff', '/out-and-back');
    await craft(page, 'PWC 10').waitFor();
    await page.context().setOffline(true);
    await press(page, 'PWC 10 is back');
    await craft(page, 'PWC 10').getByText('only on this phone').waitFor();
    await page.getByText('1 entry is only on this phone').waitFor();
    await press(page, /^Undo$/);
    // Whether it was on its way just then or not: it counts no more.
    await craft(page, 'PWC 10').getByText('only on this phone').waitFor({ state: 'hidden' });
    await press(page, 'PWC 10 is back');
    await press(page, 'One went out');
    await page.getByLabel('Which craft').fill('Pontoon 2');
    await page.getByRole('radio', { name: 'in 4 h' }).check();
    await press(page, 'Write it down');
    await page.getByText('Pontoon 2 is written down.').waitFor();
    await page.getByText(/^[23] entries are only on this phone/).waitFor();
    await expectReach(page);
    await takePictures(page, 'out-and-back-no-signal');
    await page.context().setOffline(false);
    await expect.poll(() => standing('Pontoon 2')).toBe('out');
    await expect.poll(() => standing('PWC 10')).toBe('in');
    await page.getByText('only on this phone').first().waitFor({ state: 'hidden' });
    await page.context().close();
  });
});

describe('a craft that is not back', () => {
  it('opens search sheet and ladder; times are stamped, also without signal, and taken back', async () => {
    const page = await desk.visit('staff', '/out-and-back');
    const faults = listenForFaults(page);
    await press(page, 'PWC 7 is not back: search sheet and ladder');
    await page.getByRole('heading', { name: 'Not back: PWC 7' }).waitFor();
    await page.getByText('Grey pickup').waitFor();
    const sheriff = page
      .getByRole('listitem')
      .filter({ has: page.getByRole('heading', { name: 'Call the sheriff' }) });
    await sheriff.getByRole('link', { name: 'Call County dispatch, 555-0101' }).waitFor();
    await page.getByText('Coast Guard: VHF 16').waitFor();
    await sheriff.getByLabel('What was said, their reference').fill('Boat 4 is coming, log 221');
    await sheriff.getByRole('button', { name: 'Sheriff called' }).click();
    await sheriff.getByText('Boat 4 is coming, log 221').waitFor();
    await sheriff.getByText('only on this phone').waitFor({ state: 'hidden' });
    await sheriff.getByText(/^\d\d:\d\d, The staff/).waitFor();
    await sheriff.getByText('Boat 4 is coming, log 221').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'not-back');
    await page.context().setOffline(true);
    await press(page, 'Renter called');
    await page.getByText('only on this phone', { exact: true }).waitFor();
    await sheriff.getByRole('button', { name: /^Undo: Sheriff called/ }).click();
    await sheriff.getByText('Boat 4 is coming, log 221').waitFor({ state: 'hidden' });
    await page.context().setOffline(false);
    await page.getByText('only on this phone', { exact: true }).waitFor({ state: 'hidden' });
    await expect.poll(climbed).toEqual(['call-renter']);

    await page.getByText('Write what is known').click();
    await page.getByLabel('Where it was last seen').fill('Off the north point');
    await press(page, 'Save the sheet');
    await page.getByText('Saved.').waitFor();
    await press(page, 'Read this out');
    await page.getByRole('dialog').getByText('Off the north point').waitFor();
    await expectReach(page);
    await takePictures(page, 'not-back-read');
    await press(page, 'Close');
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.printed').innerText()).toContain('staff');
    expect(await page.getByRole('button', { name: 'End it' }).isVisible()).toBe(false);
    expect(await page.getByText('Off the north point').first().isVisible()).toBe(true);
    await page.emulateMedia({ media: null });
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('ends by the word of a person, asks after found empty for an incident, and leads to it', async () => {
    const page = await desk.visit('manager', '/out-and-back');
    await page.getByRole('link', { name: 'Being looked for: PWC 7' }).click();
    await press(page, 'End it');
    await page.getByText('Choose how it ended.').waitFor();
    await page.getByRole('radio', { name: 'Late, came back' }).check();
    await press(page, 'End it');
    await page.getByText(/^Ended \d\d:\d\d by The manager/).waitFor();
    expect(await standing('PWC 7')).toBe('in');
    await press(page, /^Undo$/);
    await page.getByRole('radio', { name: 'Found empty' }).check();
    await press(page, 'End it');
    await page.getByText('a disappearance from a vessel is reportable (33 CFR 173.55)').waitFor();
    await press(page, 'It is no incident');
    await page.getByText('Say why it is none.').waitFor();
    await expectReach(page);
    await takePictures(page, 'not-back-found-empty');
    await press(page, 'Make it an incident');
    await page.getByText('It is an incident.').waitFor();
    await page.getByRole('link', { name: 'Open the incident' }).click();
    await page.waitForURL(/\/incidents\//);
    await page.context().close();
  });

  it('is begun without signal under an id of its own, and goes on with the one that somebody began before', async () => {
    // The worker keeps the next page on the device, so that it opens without signal.
    const page = await desk.visit('staff', '/out-and-back', { context: { serviceWorkers: 'allow' } });
    await page.evaluate('navigator.serviceWorker.ready');
    const late = { unit: 'PWC 10', outAt: inHours(-2), dueBackAt: inHours(-1) };
    await create(staff, '/api/outings', late).expect(201);
    await page.reload();
    await craft(page, 'PWC 10')
      .getByText(/^overdue by 1 h [01] min/)
      .waitFor();
    await page.context().setOffline(true);
    await press(page, 'PWC 10 is not back: search sheet and ladder');
    await press(page, 'Our boat is away');
    await page.getByText('only on this phone', { exact: true }).waitFor();
    const made = await create(staff, '/api/not-back', { unit: 'PWC 10' }).expect(201);
    const { id } = made.body as { id: string };
    await page.context().setOffline(false);
    await page.waitForURL(`**/out-and-back/not-back/${id}`);
    await page.getByText(/^Opened .+ by The manager/).waitFor();
    await page.getByRole('button', { name: /^Undo: Our boat is away/ }).waitFor();
    await page.context().close();
  });
});

async function climbed(): Promise<string[]> {
  const answer = await staff.get('/api/not-back').expect(200);
  const { items } = answer.body as { items: { unit: string; climbed: { rung: string }[] }[] };
  return items.find(({ unit }) => unit === 'PWC 7')?.climbed.map(({ rung }) => rung) ?? [];
}
