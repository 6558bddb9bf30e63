import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Browser, Person } from '../accounts/house.js';
import { IncidentCase, operatorOf, peopleWith } from '../decision/incident-case.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';
import { leaveOnDisk } from './outbox-on-disk.js';
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

const entry = (page: Page, name: string) => page.getByRole('article', { name, exact: true });
const press = (page: Page, name: string | RegExp) =>
  page.getByRole('button', { name, exact: typeof name === 'string' }).click();
const isEmpty = (page: Page) => page.getByText('Nothing waits').waitFor();

const peopleNamed = (name: string) => peopleWith([operatorOf('PWC-7', { name })]);

async function documentOf(id: string, section: string): Promise<object> {
  const answer = await asManager.get(`/api/incidents/${id}/sections/${section}`).expect(200);
  return (answer.body as { document: object }).document;
}

describe('what is only on a phone', () => {
  it('is told on every page, stands in the order in which it goes, and goes when it can', async () => {
    const page = await desk.visitOnDevice('/call');
    const faults = listenForFaults(page);
    await page.getByRole('button', { name: /^PWC 7/ }).waitFor();
    await page.route('**/api/**', (route) => route.abort());
    await press(page, /^PWC 7/);
    await press(page, 'Next');
    // Parts of a call follow its opening a moment after the last touch.
    await page.getByRole('link', { name: /^[3-9] unsent ?: [3-9] entries are only on this device/ }).click();
    await page.getByRole('heading', { name: 'Only on this device' }).waitFor();
    const [first, ...others] = await page.getByRole('article').allInnerTexts();
    expect(first).toMatch(/^Call\n+Saved on this device, not yet sent\n+Written .* with no name picked/);
    expect(others).toContainEqual(expect.stringMatching(/^Call: First call\n/));
    await page.locator('summary').filter({ hasText: 'See what it says' }).nth(1).click();
    await page.getByRole('definition').filter({ hasText: 'PWC 7' }).first().waitFor();
    await press(page, 'Try to send now');
    await page.getByText('The service was not reached.').waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'unsent');
    await page.unroute('**/api/**');
    await press(page, 'Try to send now');
    await isEmpty(page);
    await expectReach(page);
    expect(await page.getByRole('link', { name: /unsent/ }).count()).toBe(0);
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('speaks Spanish, and warns where the browser may throw it away or cannot read it', async () => {
    const page = await desk.visitOnDevice('/unsent', { context: { locale: 'es-MX' } });
    await page.getByRole('heading', { name: 'Solo en este aparato' }).waitFor();
    await page.getByText('Este navegador puede borrar lo guardado').waitFor();
    await page.getByText('Nada espera').waitFor();
    await page.addInitScript("indexedDB.open = () => { throw new DOMException('No room', 'UnknownError'); }");
    await page.reload();
    await page.getByText('No se puede leer lo que guarda este aparato').waitFor();
    await expectReach(page);
    await page.context().close();
  });
});

describe('what the service did not take', () => {
  it('is shown beside what somebody else wrote, and put in its place when the person says so', async () => {
    const one = await IncidentCase.quietGrounding(asManager, desk.house.now());
    await one.write('people', peopleNamed('Ann Bell'));
    const page = await desk.visit(manager, '/unsent');
    await isEmpty(page);
    await leaveOnDisk(page, [
      {
        ...{ id: '1', line: one.id, about: 'People', by: manager.id },
        path: `/api/incidents/${one.id}/sections/people`,
        body: { document: peopleNamed('Ann Bellow'), reason: 'She spelled it.' },
        version: 1,
      },
    ]);
    await entry(page, 'People').getByText('Choose what becomes of yours.').waitFor();
    const both = await entry(page, 'People').getByRole('listitem').innerText();
    expect(both).toMatch(/Person 1, Name[\s\S]*Ann Bellow[\s\S]*Ann Bell\b/);
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'unsent-conflict');
    await press(page, 'Put mine in place of theirs');
    await isEmpty(page);
    expect(await documentOf(one.id, 'people')).toMatchObject({ people: [{ name: 'Ann Bellow' }] });
    await page.context().close();
  });

  it('is kept as a note, copied, or thrown away only when the person says so twice', async () => {
    const one = await IncidentCase.open(asManager);
    const page = await desk.visit(manager, '/unsent');
    await isEmpty(page);
    const refused = (id: string, about: string) => ({
      ...{ id, about, line: one.id, by: manager.id, version: 0 },
      path: `/api/incidents/${one.id}/sections/account`,
      body: { document: { narrativ: `Words of ${about}` } },
    });
    await leaveOnDisk(page, [refused('1', 'Account'), refused('2', 'Second thoughts')]);
    await entry(page, 'Second thoughts').getByText('/document/narrativ').waitFor();
    await expectReach(page);
    await takePictures(page, 'unsent-refused');

    await entry(page, 'Account').getByRole('button', { name: 'Copy the words' }).click();
    await entry(page, 'Account').getByText('Words of Account').last().waitFor();
    await entry(page, 'Account').getByRole('button', { name: 'Keep mine as a note on the incident' }).click();
    await page.getByText('Kept as a note on the incident.').waitFor();
    await expect
      .poll(() => documentOf(one.id, 'timeline'))
      .toMatchObject({
        entries: [{ what: expect.stringContaining('narrativ: Words of Account') as string }],
      });

    await entry(page, 'Second thoughts').getByRole('button', { name: 'Throw it away' }).click();
    await page.getByRole('dialog', { name: 'Throw it away?' }).waitFor();
    await expectReach(page);
    await press(page, 'Keep it');
    await entry(page, 'Second thoughts').getByRole('button', { name: 'Throw it away' }).click();
    await press(page, 'Throw it away for good');
    await page.getByText('Thrown away: Second thoughts.').waitFor();
    await isEmpty(page);
    await page.context().close();
  });

  it('is saved from the device where it is a file', async () => {
    const page = await desk.visit(manager, '/unsent');
    await isEmpty(page);
    const incident = crypto.randomUUID();
    const file = (id: string, name: string, content?: string) => ({
      ...({ kind: 'file', id, line: incident, incident, about: name, by: manager.id, name } as const),
      ...{ size: 1_240_000, sha256: '0'.repeat(64) },
      ...(content !== undefined && { content }),
    });
    await leaveOnDisk(page, [file('1', 'Bow', 'the bytes of a bow'), file('2', 'Stern')]);
    await entry(page, 'Bow').getByText('Bow, 1.2 MB').waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      entry(page, 'Bow').getByRole('button', { name: 'Save a copy of the file' }).click(),
    ]);
    expect(readFileSync(await download.path(), 'utf8')).toBe('the bytes of a bow');
    await entry(page, 'Stern').getByRole('button', { name: 'Save a copy of the file' }).click();
    await entry(page, 'Stern').getByText('The file itself is no longer on this device').waitFor();
    await page.context().close();
  });

  it('waits behind an opening that was not taken, and is not shown to somebody else', async () => {
    const staff = await desk.house.person('staff');
    const page = await desk.visit(staff, '/unsent');
    await isEmpty(page);
    const line = crypto.randomUUID();
    await leaveOnDisk(page, [
      {
        ...{ id: '1', line, about: 'call', by: staff.id, method: 'POST', opens: true },
        path: '/api/incidents',
        body: { id: 'no id', call: { kind: 'now' } },
      },
      {
        ...{ id: '2', line, about: 'Place', by: staff.id, method: 'POST' },
        path: `/api/incidents/${line}/sections/time-and-place/additions`,
        body: { waterBody: 'Lake Texoma' },
      },
      {
        ...{ id: '3', line: 'other', about: 'People', by: manager.id, method: 'POST' },
        path: '/api/incidents/other/sections/people/additions',
        body: { people: [{ id: 'p1', name: 'Ann Bell' }] },
      },
    ]);
    await entry(page, 'Place').getByText('It waits: the entry that opens').waitFor();
    await entry(page, 'People').getByText('It goes when the person who wrote it signs in').waitFor();
    expect(await page.getByText('Ann Bell').count()).toBe(0);
    expect(await entry(page, 'People').getByRole('button').count()).toBe(0);
    await desk.signIn(page.context(), manager);
    await page.reload();
    await entry(page, 'Place').getByText('See what it says').click();
    await page.getByText('Lake Texoma').waitFor();
    await page.context().close();
  });
});
