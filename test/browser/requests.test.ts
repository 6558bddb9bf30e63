import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { create } from '../accounts/house.js';
import { bodyOf } from '../follow-up/desk.js';
import { choose, expectReach, listenForFaults, smallTargets, takePictures, WIDE } from './desk.js';
import { DutiesDesk } from './duties-desk.js';

let duties: DutiesDesk;
beforeAll(async () => {
  duties = await DutiesDesk.open();
});
afterAll(() => duties.close());

const press = (page: Page, name: string): Promise<void> =>
  page.getByRole('button', { name, exact: true }).click();
const open = (page: Page, title: string): Promise<void> =>
  page.locator('summary').filter({ hasText: title }).first().click();
const fill = (page: Page, label: string, text: string): Promise<void> =>
  page.getByLabel(label, { exact: true }).last().fill(text);

describe('requests', () => {
  it('are logged with what they concern, held, produced and closed by a manager', async () => {
    const one = await duties.grounding();
    const asManager = await duties.desk.house.signedIn(duties.manager);
    const { reference } = bodyOf<{ reference: string }>(await asManager.get(`/api/incidents/${one.id}`));
    const page = await duties.desk.visit(duties.manager, '/requests', { viewport: WIDE });
    const faults = listenForFaults(page);
    await page.getByText('No request is open.').waitFor();

    await page.getByRole('link', { name: 'Log a request', exact: true }).click();
    await press(page, 'Log it');
    await page.getByText('Look at the marked fields').waitFor();
    await page.getByLabel('What kind of paper it is *').selectOption('subpoena');
    await page.getByText('Counsel has to see it first.').waitFor();
    await page.getByLabel('How it came *').selectOption('served-in-person');
    await fill(page, 'Name *', 'N. Amparo');
    await fill(page, 'Firm, office or agency', 'Amparo and Vell, attorneys');
    await choose(page, 'A federal court');
    await page.getByText('Objections before').waitFor();
    await choose(page, 'A day');
    await fill(page, 'Due on *', '2040-07-10');
    await choose(page, 'The paper states it');
    await fill(page, 'What it asks, in its words', 'Every record of the grounding.');
    await page.getByLabel('Find an incident').fill(reference);
    await page.getByRole('button', { name: new RegExp(`^${reference}, `) }).click();
    await page.getByText(`Hold everything about ${reference}`).waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'request-new');
    await press(page, 'Log it');

    await page.getByRole('heading', { level: 1, name: /^Subpoena R-20\d\d-0001$/ }).waitFor();
    await page.getByText('Everything is held').waitFor();
    await open(page, 'Enter what was produced');
    await fill(page, 'How *', 'by courier');
    await fill(page, 'What went, and what was kept back *', 'The packet; medical detail stayed.');
    await press(page, 'Keep it');
    await page.getByText('The packet; medical detail stayed.').waitFor();
    await open(page, 'Say how it stands now');
    await choose(page, 'Answered in part, still open');
    await fill(page, 'Why, in a few words *', 'The camera follows.');
    await press(page, 'Keep that');
    await page.getByText(/The camera follows\.$/).waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'request');
    await open(page, 'Correct what was entered');
    await fill(page, 'Docket number', '4:26-cv-00117');
    await fill(page, 'Why it is corrected *', 'It stands on the second page.');
    await press(page, 'Keep the correction');
    await page.locator('dd', { hasText: '4:26-cv-00117' }).waitFor();
    await open(page, 'Everything that was entered');
    await page.getByText('It stands on the second page.').last().waitFor();

    await page.getByRole('link', { name: /^Make a packet of/ }).click();
    expect(await page.getByLabel('What it is for').inputValue()).toMatch(
      /^Subpoena R-20\d\d-0001 of N\. Amparo$/,
    );
    await page.goto(`${duties.desk.url}/incidents/${one.id}/requests`);
    await page.getByText(/due .*2040/).waitFor();
    await page.goto(`${duties.desk.url}/requests`);
    await page.getByText('Amparo and Vell').waitFor();
    await expectReach(page);
    await page.goto(duties.desk.url);
    await page.getByRole('heading', { name: 'Papers that ask for records' }).waitFor();
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('are taken at the counter by staff, in Spanish too, also without signal', async () => {
    const page = await duties.desk.visit('staff', '/served-paper');
    await page.getByText('You need not read it.').waitFor();
    await press(page, 'Enter that it came');
    await page.getByText('Write who brought it.').waitFor();
    await fill(page, 'Who brought it, or whose name stands on it', 'A process server');
    await choose(page, 'Handed over in person');
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'served-paper');
    await page.context().setOffline(true);
    await press(page, 'Enter that it came');
    await page.getByText('Tell the manager now.').waitFor();
    const waits = page.getByRole('link', { name: /only on this device/ });
    await waits.waitFor();
    await page.context().setOffline(false);
    await waits.waitFor({ state: 'hidden' });
    const manager = await duties.desk.house.signedIn(duties.manager);
    const read = async (): Promise<{ items: { kind: string; from: string }[] }> =>
      bodyOf(await manager.get('/api/requests?kind=not-read'));
    await expect.poll(read).toMatchObject({ items: [{ kind: 'not-read', from: 'A process server' }] });
    await page.goto(`${duties.desk.url}/requests`);
    expect(await page.getByText('A process server').count()).toBe(0);
    await page.context().close();
    const spanish = await duties.desk.visit('staff', '/served-paper', { context: { locale: 'es-MX' } });
    await spanish.getByText('No hace falta que lo lea.').waitFor();
    await spanish.context().close();
  });

  it('are read by the lawyer of the incident, who changes nothing', async () => {
    const one = await duties.grounding();
    const manager = await duties.desk.house.signedIn(duties.manager);
    const lawyer = await duties.desk.house.person('counsel');
    await manager.post(`/api/incidents/${one.id}/counsel`).send({ account: lawyer.id }).expect(200);
    const letter = {
      ...{ kind: 'preservation-letter', from: 'N. Amparo', receivedAt: duties.desk.house.now() },
      ...{ way: 'mail', receivedBy: 'Ruth', due: 'unknown', incidents: [{ id: one.id }] },
    };
    await create(manager, '/api/requests', letter).expect(201);
    const page = await duties.desk.visit(lawyer, '/requests');
    await page.getByRole('link', { name: /^Preservation letter/ }).click();
    await page.getByText('Nobody has stated a due time.').first().waitFor();
    expect(await page.locator('summary').filter({ hasText: 'Correct what was entered' }).count()).toBe(0);
    await expectReach(page);
    await page.context().close();
  });
});
