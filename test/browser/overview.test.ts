import { afterAll, beforeAll, describe, it, expect } from 'vitest';
import { create } from '../accounts/house.js';
import { IncidentCase } from '../decision/incident-case.js';
import { BrowserDesk, expectReach, listenForFaults, smallTargets, takePictures } from './desk.js';

let desk: BrowserDesk;
beforeAll(async () => {
  desk = await BrowserDesk.open();
});
afterAll(() => desk.close());

describe('the overview of an incident', () => {
  it('says what is known, how the duties stand, who wrote which section and what the report lacks of it', async () => {
    const manager = await desk.house.person('manager');
    const one = await IncidentCase.quietGrounding(await desk.house.signedIn(manager), desk.house.now());
    const page = await desk.visit(manager, `/incidents/${one.id}`);
    const faults = listenForFaults(page);
    await page.getByRole('heading', { name: /^Incident 20\d\d-0001$/ }).waitFor();
    const row = (term: string) => page.locator('.row').filter({ has: page.getByText(term, { exact: true }) });
    await row('What').getByText('Grounding').waitFor();
    expect(await row('People').innerText()).toContain('Somebody, not named yet: Operator, Unhurt');
    expect(await row('When').innerText()).toContain('Told');
    await page.getByText(/not required on these facts$/).waitFor();
    const people = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'People' }) });
    expect(await people.innerText()).toContain(manager.name);
    await people.getByText(/The official report still lacks \d+ lines/).click();
    await people
      .getByText(/Date of birth$/)
      .first()
      .waitFor();
    await expectReach(page);
    expect(await smallTargets(page)).toEqual([]);
    await takePictures(page, 'overview');
    await page.getByRole('link', { name: 'Open the duties' }).click();
    await page.getByRole('heading', { name: 'What the law calls for' }).waitFor();
    expect(faults).toEqual([]);
    await page.context().close();
  });

  it('is there when next to nothing is known, when the service fails, and for counsel that was assigned', async () => {
    const manager = await desk.house.signedIn('manager');
    const answer = await create(manager, '/api/incidents', { call: {} }).expect(201);
    const { id } = answer.body as { id: string };
    const page = await desk.visit('staff', `/incidents/${id}`);
    await page.getByText('Not said yet').first().waitFor();
    await page.getByText('Nobody has written here').first().waitFor();
    await expectReach(page);
    await takePictures(page, 'overview-empty');
    const fault = { type: 'about:blank', title: 'The service failed', status: 500, errors: [] };
    await page.route('**/api/incidents/*/record', (route) => route.fulfill({ status: 500, json: fault }));
    await page.reload();
    await page.getByRole('alert').waitFor();
    await expectReach(page);
    await page.unroute('**/api/incidents/*/record');
    await page.getByRole('button', { name: 'Try again' }).click();
    await page.getByText('Nobody has written here').first().waitFor();
    await page.context().close();
    const counsel = await desk.visit('counsel', `/incidents/${id}`);
    await counsel.getByText('There is nothing at this address.').waitFor();
    await counsel.context().close();
  });
});

describe('a section of the record', () => {
  it('loses a value for good when a manager withdraws it, and says that and why', async () => {
    const one = await IncidentCase.quietGrounding(await desk.house.signedIn('manager'), desk.house.now());
    const page = await desk.visit('manager', `/incidents/${one.id}/record/account`);
    await page.getByText('Withdraw a value').click();
    await page.getByRole('button', { name: 'Withdraw it for good' }).click();
    await page.getByText('Choose what is withdrawn.').waitFor();
    await page.getByLabel('What is withdrawn').selectOption('/oilSheen');
    await page.getByLabel('Why it is withdrawn').fill('Was of another incident.');
    await expectReach(page);
    await takePictures(page, 'record-withdraw');
    await page.getByRole('button', { name: 'Withdraw it for good' }).click();
    await page.getByText('Withdrawn.', { exact: true }).waitFor();
    const answer = await one.browser.get(`/api/incidents/${one.id}/sections/account`).expect(200);
    const { document } = answer.body as { document: object };
    expect(Object.keys(document)).toEqual(['casualtyTypes', 'involvesVesselOrEquipment']);
    await page.context().close();
  });
});
