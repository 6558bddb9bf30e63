import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { startServer } from '../support/start-server.js';
import { BrowserDesk, expectReach, listenForFaults, PHONE, smallTargets, takePictures } from './desk.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
});
afterAll(() => desk.close());

const heading = (page: Page, name: string | RegExp) => page.getByRole('heading', { name });
const section = (page: Page, name: string | RegExp) => page.getByRole('region', { name });
const line = (page: Page, name: string) =>
  page.getByRole('listitem').filter({ has: page.getByRole('link', { name, exact: true }) });

describe('the law in use', () => {
  it('is listed for anyone, found by name, and says what may be due, from when on and how old the text is', async () => {
    const page = await desk.visit(null, '/law');
    const faults = listenForFaults(page);
    await heading(page, 'Accident reports: 55').waitFor();
    await heading(page, 'Other matters: 7').waitFor();
    const texas = await line(page, 'Texas').innerText();
    for (const words of [
      'Accident report',
      'more than $2,000',
      'Within 30 days',
      '25 November 2026',
      'in the law itself',
    ]) {
      expect(texas).toContain(words);
    }
    expect(texas).not.toContain('To be read again');
    expect(await line(page, 'Guam').innerText()).toContain('That is not "no report"');
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'law');
    await page.getByLabel('Find a jurisdiction or a matter').fill('new hamp');
    await expect.poll(() => page.getByRole('main').getByRole('listitem').count()).toBe(1);
    await expectReach(page);
    await page.getByLabel('Find a jurisdiction or a matter').fill('atlantis');
    await page.getByText('No law here is called that.').waitFor();
    await expectReach(page);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('tells administrators what is to be read again, and what to do then', async () => {
    const page = await desk.visit('administrator', '/law');
    const due = section(page, '3 are due to be read again');
    await due.waitFor();
    expect(await due.getByRole('listitem').allInnerTexts()).toEqual([
      expect.stringMatching(/^Guam\s+Due since 25 November 2026$/),
      expect.stringMatching(/^U\.S\. Virgin Islands\s/),
      expect.stringMatching(/^West Virginia\s/),
    ]);
    expect(await line(page, 'Texas').innerText()).toMatch(/To be read again\s+Not yet/);
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await page.context().close();
  });

  it('has a page each: the rule, what is not known, every source, and cases that this browser tries', async () => {
    const page = await desk.visit(null, '/law');
    const faults = listenForFaults(page);
    await page.getByRole('link', { name: 'New York', exact: true }).click();
    await heading(page, 'New York').waitFor();
    const report = section(page, 'Written accident report');
    expect(await report.innerText()).toContain("Damage to any one person's property of more than $1,000.");
    expect(await report.innerText()).toContain('within 7 days: 9 NYCRR 444.2 (regulation)');
    expect(await section(page, "Owner's report").innerText()).toContain('Within 5 days of learning of it');
    expect(await section(page, 'What is not known').innerText()).toContain('5 days, 7 days');
    const source = section(page, 'Sources').getByRole('link').first();
    expect(await source.getAttribute('href')).toMatch(/^https:\/\/newyork\.public\.law/);
    const cases = section(page, 'Cases, tried in this browser');
    await cases.locator('summary').click();
    await cases.getByText(/^All \d+ cases come out as the text was read\.$/).waitFor();
    expect(await cases.innerText()).toMatch(
      /damage of which the business learned a minute later\s+Cannot tell yet, by .*18 June.* 11:21.*, if it is required/,
    );
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'law-new-york');
    await page.emulateMedia({ media: 'print' });
    expect(await page.getByRole('button', { name: 'Print' }).isVisible()).toBe(false);
    expect(await page.getByText(/^Printed /).isVisible()).toBe(true);
    await page.emulateMedia({ media: 'screen' });
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('marks what is from memory, says what was not read, and that an unknown code is no sign of anything', async () => {
    const page = await desk.visit(null, '/law/FL-LIVERY');
    await section(page, 'Sources').getByText('from memory').waitFor();
    await page.goto(`${desk.url}/law/gu`);
    await page.getByText('No text of the law could be read').waitFor();
    await expectReach(page);
    await page.goto(`${desk.url}/law/zz`);
    await heading(page, 'No law is kept here for ZZ').waitFor();
    await page.getByText('That is no sign that nothing is due').waitFor();
    await expectReach(page);
    await page.route('**/api/law/packs', (route) => route.abort());
    await page.goto(`${desk.url}/law/tx`);
    await page.getByRole('alert').waitFor();
    await page.unroute('**/api/law/packs');
    await page.getByRole('button', { name: 'Try again' }).click();
    await heading(page, 'Texas').waitFor();
    await page.context().close();
  });

  it('says first which cases come out otherwise, as under a correction', async () => {
    const page = await desk.visit(null, '/');
    await page.route('**/api/law/packs', async (route) => {
      const answer = await route.fetch();
      const text = (await answer.text()).replaceAll('"amountUsd":1000,', '"amountUsd":900,');
      const packs = JSON.parse(text) as { jurisdiction: string; corrections?: object[] }[];
      const corrections = [
        { on: '2026-12-01', by: 'Ana Ruiz', citation: 'Nav. Law 47-b', note: 'It says $900.' },
      ];
      const given = packs.map((pack) => (pack.jurisdiction === 'NY' ? { ...pack, corrections } : pack));
      await route.fulfill({ response: answer, json: given });
    });
    await page.goto(`${desk.url}/law/NY`);
    await section(page, 'Corrections in use')
      .getByText('On 1 December 2026 by Ana Ruiz: It says $900.')
      .waitFor();
    const cases = section(page, 'Cases, tried in this browser');
    await page.route('**/data/cases/**', (route) => route.abort());
    await cases.locator('summary').click();
    await cases.getByText('The cases need signal once').waitFor();
    await expectReach(page);
    await page.unroute('**/data/cases/**');
    await cases.getByRole('button', { name: 'Try again' }).click();
    await cases.getByText(/^\d of \d+ cases come out otherwise/).waitFor();
    expect(await cases.innerText()).toMatch(/exactly \$1,000\s+Required, by .*\s+Expected: Not required/);
    await page.context().close();
  });

  it('is there without signal once the browser has kept the desk, with the cases that were tried', async () => {
    const server = await startServer();
    const page = await desk.browser.newPage({ viewport: PHONE, locale: 'en-US' });
    await page.goto(`${server.url}/law/OK`);
    await page.evaluate('navigator.serviceWorker.ready');
    await page.reload();
    const cases = section(page, 'Cases, tried in this browser');
    await cases.locator('summary').click();
    await cases.getByText(/^All \d+ cases/).waitFor();
    // The service out of reach, for the worker as well: what a browser calls offline, the worker does not feel.
    await server.stop();
    await page.reload();
    await page.getByText('No signal. This is the law as this device last had it.').waitFor();
    await cases.locator('summary').click();
    await cases.getByText(/^All \d+ cases/).waitFor();
    await expectReach(page);
    await page.goto(`${server.url}/vocabulary`);
    await heading(page, 'Kind of occurrence').waitFor();
    await page.context().close();
  });
});

describe('the words of the trade', () => {
  it('are those of a day, each with its source, memory marked, and found as they are typed', async () => {
    const page = await desk.visit(null, '/vocabulary');
    const faults = listenForFaults(page);
    await page.getByText('Those labels have not been read').waitFor();
    await page.getByLabel('For an occurrence on').fill('2023-12-31');
    await page.getByText('The kinds of occurrence are those of 2013.').waitFor();
    expect(await page.getByText('Those labels have not been read').count()).toBe(0);
    expect(await page.getByText('from memory', { exact: true }).count()).toBeGreaterThan(0);
    expect(await section(page, 'Fuel').innerText()).toMatch(/Source: \S/);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'vocabulary');
    await page.getByLabel('Find a word').fill('capsiz');
    await expect.poll(() => heading(page, 'Fuel').count()).toBe(0);
    await section(page, 'Kind of occurrence').getByText('Capsizing', { exact: true }).waitFor();
    await expectReach(page);
    await page.getByLabel('Find a word').fill('no such word');
    await page.getByText('No word here is like that.').waitFor();
    await page.getByLabel('For an occurrence on').fill('');
    await page.getByText('Give a day, such as 2026-06-13.').waitFor();
    await expectReach(page);
    expect(faults).toEqual([]);
    await page.context().close();
  });
});
