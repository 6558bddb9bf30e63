import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RetentionLine } from '../../shared/retention/retention-line.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
});
afterAll(() => desk.close());

const open = (page: Page, name: string) => page.locator('summary').filter({ hasText: name }).first().click();
const item = (page: Page, name: string) => page.getByRole('article', { name });

const PERIOD = {
  id: 'detail-choice',
  months: 60,
  earliest: '2026-05-01',
  latest: '2026-05-01',
  applies: 'true',
  reason: 'Five years after it was closed. Our own choice: ask counsel.',
  citation: null,
  basis: 'choice',
  doubts: [],
} as const;

/** Nothing of a new desk is old enough, so that the page is shown answers as the service gives them. */
const LINE: RetentionLine = {
  id: 'incident-record/3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10',
  version: 12,
  kind: 'incident-record',
  incidentId: '3f6c2f1e-5b1d-4c59-9d0e-2f4f6a1c7b10',
  reference: '2020-0004',
  month: null,
  state: 'due',
  earliest: '2026-05-01',
  latest: '2026-05-01',
  periods: [
    PERIOD,
    { ...PERIOD, id: 'maritime-claim', months: 36, citation: '46 U.S.C. 30106', basis: 'read-secondary' },
  ],
  missing: [],
  stops: [],
  holds: { fields: 41, files: 3, privileged: 1, packets: 0, drafts: 0 },
  keptUntil: null,
};
const STOPPED: RetentionLine = {
  ...LINE,
  id: 'medical/2',
  kind: 'medical',
  reference: '2019-0011',
  state: 'stopped',
  holds: { fields: 7 },
  stops: [{ by: 'hold', id: 'h1', words: 'A hold has been on since 2025-03-01: counsel alone releases it.' }],
};
const UNTOLD: RetentionLine = {
  ...LINE,
  id: 'files/3',
  kind: 'files',
  reference: '2018-0002',
  state: 'cannot-tell',
  latest: '2038-06-13',
  missing: ['The birth date or age of Tam Reed.'],
  holds: { files: 12 },
};
const SOON: RetentionLine = {
  ...LINE,
  id: 'outings/2021-06',
  kind: 'outings',
  incidentId: null,
  reference: null,
  month: '2021-06',
  state: 'soon',
  holds: { outings: 412 },
};

async function withLines(page: Page, items: readonly RetentionLine[]): Promise<void> {
  await page.route(/\/api\/retention\?/, (route) =>
    route.fulfill({ json: { today: '2026-06-01', counts: {}, items, next: null } }),
  );
}

describe('what has been kept long enough', () => {
  it('is empty at first, found from places and register, and tells how long everything is kept and why', async () => {
    const page = await desk.visit('manager', '/places');
    const faults = listenForFaults(page);
    await page.getByRole('link', { name: 'Kept long enough' }).click();
    await page.getByText('Nothing is due for deletion').waitFor();
    await page.getByText('Nobody has decided anything here yet.').waitFor();
    await page.getByText('Medical detail').first().waitFor();
    expect(await page.getByText('29 CFR 1910.1020(d)(1)(i)').count()).toBeGreaterThan(0);
    await expectReach(page);
    await open(page, 'Lengthen our own choice');
    await page.getByLabel('Months').fill('12');
    await page.getByLabel('Why').fill('Shorter.');
    await page.getByRole('button', { name: 'Save the longer time' }).click();
    await page.getByText('Must be at least 60 months').first().waitFor();
    await page.getByLabel('Months').fill('72');
    await page.getByRole('button', { name: 'Save the longer time' }).click();
    await page.getByText('Lengthened to 6 years: Shorter.').first().waitFor();
    expect(faults).toEqual([]);
    await takePictures(page, 'retention-empty');
    await page.context().close();
  });

  it('shows what is due, stopped, untold and soon, and deletes after a second question', async () => {
    const page = await desk.visit('manager', '/');
    const faults = listenForFaults(page);
    await withLines(page, [LINE, STOPPED, UNTOLD, SOON]);
    const sent: { body: unknown; version: string | undefined }[] = [];
    await page.route(/\/api\/retention\/decisions$/, async (route) => {
      sent.push({ body: route.request().postDataJSON(), version: route.request().headers()['if-match'] });
      await route.fulfill({ status: 201, json: { id: 'd1' } });
    });
    await page.goto(`${desk.url}/retention`);
    const due = item(page, 'The whole record of an incident: 2020-0004');
    await due.waitFor();
    expect(await item(page, 'Medical detail: 2019-0011').getByText('Delete for good').count()).toBe(0);
    await item(page, 'Medical detail: 2019-0011').getByText('A hold has been on').waitFor();
    await item(page, 'Photographs and other files: 2018-0002').getByText('Tam Reed').waitFor();
    await item(page, 'Rental data of outings without an incident: June 2021')
      .getByText('412 outings')
      .waitFor();
    await due.locator('summary').filter({ hasText: 'Every period' }).click();
    await due.getByText('46 U.S.C. 30106').waitFor();
    await due.locator('summary').filter({ hasText: 'Delete for good' }).click();
    await due.getByText('Copies of the desk that were made before hold it still.').waitFor();
    await due.getByLabel('Counsel who directed it').fill('Cleo Law');
    await due.getByLabel('Day of the direction').fill('2026-05-20');
    await due.getByLabel('Why').fill('Its time is over.');
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'retention');
    await due.getByRole('button', { name: 'Delete for good' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByText('This cannot be undone').waitFor();
    await takePictures(page, 'retention-sure');
    expect(sent).toEqual([]);
    await dialog.getByRole('button', { name: 'Delete it for good' }).click();
    await page.getByText('Deleted for good: The whole record of an incident: 2020-0004.').waitFor();
    expect(sent).toMatchObject([
      {
        version: '"12"',
        body: { kind: 'incident-record', incident: LINE.incidentId, decision: 'delete', counsel: 'Cleo Law' },
      },
    ]);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('asks to look again where it changed meanwhile, and says so when it cannot be had', async () => {
    const page = await desk.visit('manager', '/');
    await withLines(page, [LINE]);
    await page.route(/\/api\/retention\/decisions$/, (route) =>
      route.fulfill({
        status: 412,
        contentType: 'application/problem+json',
        json: {
          type: '/problems/changed',
          title: 'Changed',
          status: 412,
          errors: [],
          current: LINE,
          yours: {},
        },
      }),
    );
    await page.goto(`${desk.url}/retention`);
    await open(page, 'Keep it longer');
    await page.getByLabel('Keep it through').fill('2030-01-01');
    await page.getByLabel('Why').fill('Counsel asked.');
    await page.getByRole('button', { name: 'Keep it longer' }).click();
    await page.getByText('It changed after you saw it.').waitFor();
    await page.getByRole('button', { name: 'Read the list again' }).waitFor();
    await page.unroute(/\/api\/retention\?/);
    await page.route(/\/api\/retention\?/, (route) =>
      route.fulfill({ status: 500, json: { title: 'x', status: 500, errors: [] } }),
    );
    await page.reload();
    await page.getByRole('button', { name: 'Try again' }).waitFor();
    await expectReach(page);
    await page.context().close();
  });
});
